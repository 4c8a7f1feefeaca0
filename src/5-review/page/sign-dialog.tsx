import { useEffect, useRef, useState } from 'preact/hooks';
import { kindTitle } from '../../../shared/vocabulary/kind-titles.ts';
import { shortTime } from '../../../shared/wording/short.ts';
import { whyNotToSign } from '../why-not-to-sign.ts';
import { decideUndo } from './decide-undo.ts';
import { Dialog } from './dialog.tsx';
import { inspector, reloadExtras, reviewed, versions } from './inspection-state.ts';
import { ask } from './server-link.ts';

const usualStatement =
  'I have listened to what was flagged in this recording and to what was drawn at random. These findings are mine, as far as the camera and the recording show them.';

export function SignDialog() {
  const why = whyNotToSign(reviewed.value);
  const newest = versions.value.at(-1);
  return (
    <Dialog title={newest?.isCurrent ? 'Signed' : 'Finish and sign'}>
      <Estimate />
      <Orphans />
      {versions.value.length > 0 && (
        <ul class="versions">
          {versions.value.map((version) => (
            <li key={version.version}>
              Version {version.version}: {version.name}
              {version.licence ? ` (${version.licence})` : ''}, {new Date(version.signedAt).toLocaleString()}
              {version.isCurrent ? ' – holds what is here' : ''}
            </li>
          ))}
        </ul>
      )}
      {newest?.isCurrent ? (
        <p>
          Nothing has changed since. <code>lineword verify</code> checks it at any time.
        </p>
      ) : why ? (
        <p class="why">{why}</p>
      ) : (
        <SignForm />
      )}
    </Dialog>
  );
}

function SignForm() {
  const [name, setName] = useState(inspector.value.name);
  const [licence, setLicence] = useState(inspector.value.licence ?? '');
  const [statement, setStatement] = useState(usualStatement);
  const nameInput = useRef<HTMLInputElement>(null);
  useEffect(() => nameInput.current?.focus(), []);
  const [refusal, setRefusal] = useState<string | null>(null);
  const sign = async () => {
    try {
      await ask('/api/sign', { name, licence: licence.trim() || null, statement });
      inspector.value = { name, licence: licence.trim() || null };
      await reloadExtras();
    } catch (error) {
      setRefusal((error as Error).message);
    }
  };
  return (
    <form
      class="fields"
      aria-label="Sign"
      onSubmit={(event) => {
        event.preventDefault();
        void sign();
      }}
    >
      <label class="field">
        <span>Name</span>
        <input
          ref={nameInput}
          name="name"
          required
          autocomplete="name"
          value={name}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </label>
      <label class="field">
        <span>Licence or certificate number, if any</span>
        <input
          name="licence"
          autocomplete="off"
          value={licence}
          onInput={(event) => setLicence(event.currentTarget.value)}
        />
      </label>
      <label class="field wide">
        <span>Statement</span>
        <textarea
          name="statement"
          rows={4}
          required
          value={statement}
          onInput={(event) => setStatement(event.currentTarget.value)}
        />
      </label>
      <p class="wide hint">
        Signing puts your name under the sums of the recording, the words, the draft, every decision and the grade if
        there is one. A later change needs a new signature; this one stays. The key stays in your own configuration
        folder.
      </p>
      {refusal && (
        <p class="wide why" role="alert">
          {refusal}
        </p>
      )}
      <div class="deeds">
        <button type="submit" class="main">
          Sign
        </button>
      </div>
    </form>
  );
}

function Estimate() {
  const { listening, asideListening, openCount } = reviewed.value;
  const percent = (share: number) => `${Math.round(share * 100)} %`;
  return (
    <dl class="estimate-list">
      <div>
        <dt>Flagged and still open</dt>
        <dd>{openCount}</dd>
      </div>
      <div>
        <dt>Unflagged findings listened to</dt>
        <dd>
          {listening.listened} of {listening.drawn} drawn, {listening.wrong} wrong
        </dd>
      </div>
      <div>
        <dt>Silent errors among the unflagged</dt>
        <dd>
          {listening.share === null || listening.upper95 === null
            ? 'not known before the first listen'
            : `${percent(listening.share)} found; under ${percent(listening.upper95)} with 95 % confidence`}
        </dd>
      </div>
      <div>
        <dt>Talk set aside or denied, listened to</dt>
        <dd>
          {asideListening.listened} of {asideListening.drawn} drawn, {asideListening.wrong} wrong
        </dd>
      </div>
    </dl>
  );
}

/** Decisions made on an earlier draft that this one does not hold. */
function Orphans() {
  const orphans = reviewed.value.orphanedDecisions;
  if (orphans.length === 0) return null;
  return (
    <section aria-labelledby="orphans-title">
      <h3 id="orphans-title">Decisions that no longer fit</h3>
      <ul class="versions">
        {orphans.map(({ decision, why }) => (
          <li key={decision.id}>
            {orphanName(decision)} ({decision.person}, {shortDate(decision.time)}). {why}{' '}
            <button type="button" class="quiet" onClick={() => decideUndo(decision.id)}>
              Let it go
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function orphanName(decision: ReturnType<typeof orphan>): string {
  const subject = 'subject' in decision ? decision.subject : null;
  const what =
    subject?.what === 'observation'
      ? `${kindTitle(subject.kind)}${subject.at === null ? '' : ` at ${subject.at}`}, “${subject.words}”`
      : subject && 'words' in subject
        ? `“${subject.words}”`
        : 'observation' in decision
          ? `${kindTitle(decision.observation.kind)} heard at ${shortTime(decision.observation.heard.start)}`
          : (subject?.what ?? 'a run');
  return `${decision.action}: ${what}`;
}

const orphan = () => reviewed.value.orphanedDecisions[0]!.decision;

function shortDate(time: string): string {
  return new Date(time).toLocaleDateString();
}
