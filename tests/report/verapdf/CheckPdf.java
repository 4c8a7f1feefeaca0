// Validates one PDF against PDF/UA-1 with veraPDF (Maven org.verapdf:validation-model). Run as a single source file:
//   java -cp 'LIB/*' CheckPdf.java report.pdf
// Prints "compliant=true|false" and one line for each rule that failed; exits with 1 when it is not compliant.
import java.io.FileInputStream;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

public class CheckPdf {
    public static void main(String[] args) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        PDFAFlavour flavour = PDFAFlavour.PDFUA_1;
        boolean compliant;
        try (FileInputStream in = new FileInputStream(args[0]);
                PDFAParser parser = Foundries.defaultInstance().createParser(in, flavour)) {
            PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false);
            ValidationResult result = validator.validate(parser);
            compliant = result.isCompliant();
            System.out.println("compliant=" + compliant + " assertions=" + result.getTotalAssertions());
            for (TestAssertion assertion : result.getTestAssertions()) {
                if (assertion.getStatus() == TestAssertion.Status.FAILED) {
                    System.out.println(assertion.getRuleId().getClause() + " " + assertion.getMessage());
                }
            }
        }
        System.exit(compliant ? 0 : 1);
    }
}
