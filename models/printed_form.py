"""How the recogniser prints what is said: "twenty three feet, A B S" as "23 feet, ABS"."""
import re

ONES = {word: value for value, word in enumerate(
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split())}
TENS = {word: 10 * value for value, word in enumerate("twenty thirty forty fifty sixty seventy eighty ninety".split(), 2)}
ALONE = {"hundred", "thousand", "oh", "point"}
UNIT = re.compile(r"^(feet|foot|inch|inches|o'clock|percent|degrees?)$")
# Small counts stay words where no unit follows: "two way cleanout".
SMALL = (["one"], ["two"], ["zero"])


def values_of(words):
    """Each number below a hundred as its value and how many figures it has; other words with none."""
    values, at = [], 0
    while at < len(words):
        word, after = words[at], words[at + 1] if at + 1 < len(words) else None
        if word in TENS and after in ONES and 1 <= ONES[after] <= 9:
            values.append((TENS[word] + ONES[after], 2))
            at += 1
        elif word in TENS:
            values.append((TENS[word], 2))
        elif word in ONES:
            values.append((ONES[word], 1 if ONES[word] < 10 else 2))
        else:
            values.append((word, 0))
        at += 1
    return values


def figures(words):
    """A run of number words in figures: "one oh six" 106, "nineteen fifty five" 1955, "eleven point five" 11.5."""
    values, printed = values_of(words), []
    while values:
        value, places = values.pop(0)
        if not places:
            printed.append(value)
            continue
        if values and values[0][0] in ("hundred", "thousand"):
            for name, size in (("hundred", 100), ("thousand", 1000)):
                if values and values[0][0] == name:
                    values.pop(0)
                    value *= size
                    if values and values[0][1]:
                        value += values.pop(0)[0]
            printed.append(str(value))
            continue
        text = str(value)
        while values:
            following = values[1][1] if len(values) > 1 else 0
            if values[0][0] == "oh" and following == 1:
                text += f"0{values[1][0]}"
                del values[:2]
            elif values[0][0] == "point" and following:
                values.pop(0)
                text += f".{values.pop(0)[0]}"
                while values and values[0][1] == 1:
                    text += str(values.pop(0)[0])
                break
            elif values[0][1] == 2 and len(text) <= 2:
                text += str(values.pop(0)[0])
            else:
                break
        printed.append(text)
    return " ".join(printed)


def bare(token):
    return re.sub(r"[^\w']", "", token).lower()


def print_as_heard(said):
    said = re.sub(r"\b[A-HJ-Z](?: [A-Z]){1,4}\b", lambda letters: letters[0].replace(" ", ""), said)
    said = re.sub(rf"\b({'|'.join(TENS)})-([a-z]+)", r"\1 \2", said, flags=re.I)
    tokens, printed, at = said.split(), [], 0
    while at < len(tokens):
        run, end = [], at
        while end < len(tokens) and (bare(tokens[end]) in {*ONES, *TENS} or (run and bare(tokens[end]) in ALONE)):
            run.append(bare(tokens[end]))
            end += 1
            if re.search(r"\W$", tokens[end - 1]):
                break
        while run and run[-1] in ("point", "oh"):
            run.pop()
            end -= 1
        if not run:
            printed.append(tokens[at])
            at += 1
            continue
        tail = re.search(r"\W*$", tokens[end - 1])[0]
        after = bare(tokens[end]) if end < len(tokens) and not tail else ""
        is_word = (run in SMALL and not UNIT.match(after)) or (run == ["three"] and after.startswith("quarter"))
        printed += tokens[at:end] if is_word else [figures(run) + tail]
        at = end
    return " ".join(printed)
