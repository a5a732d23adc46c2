import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { counted } from '../../format/counts.js';
import { type ActHeaders, useAct } from '../../server/act.js';
import { COMPONENTS_KEY } from '../../server/components.js';
import { FLEET_KEY } from '../../server/fleet.js';
import { Button } from '../../ui/actions/button.js';
import { announce } from '../../ui/messages/announcements.js';
import { ConflictPanel } from '../../ui/messages/conflict-panel.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import { JobProgress } from '../../ui/progress/job-progress.js';
import { applyFile, cancelFile, IMPORTS_KEY, type ImportFile, isAtWork } from './imports-data.js';

interface ImportActsProps {
  readonly file: ImportFile;
  readonly may: boolean;
  readonly offline: boolean;
}

const STATE_WORDS = {
  checking: 'Being checked',
  checked: 'Checked',
  applying: 'Being applied',
  applied: 'Applied',
  cancelled: 'Cancelled',
} as const;

const CHANGED = new Set([409, 412]);

function whyOff({ file, offline }: ImportActsProps): string | null {
  if (offline) return OFF_WHILE_OFFLINE;
  if (file.failed > 0)
    return `Off: ${counted(file.failed, 'row')} with errors. Correct the file, then choose it again.`;
  if (file.ready === 0) return 'Off: the file holds nothing that is not on record.';
  return null;
}

/** The work under way, with Cancel. */
function Progress({ file, may, offline }: ImportActsProps) {
  const cancelling = useAct({
    perform: cancelFile,
    refresh: [IMPORTS_KEY],
    onDone: () => announce(`The work on ${file.fileName} is being stopped. Nothing of it stays.`),
  });
  const { job } = file;
  return (
    <>
      <JobProgress
        what={file.state === 'checking' ? 'Checking the file' : 'Applying the file'}
        done={job?.done ?? 0}
        total={job?.total ?? null}
        unit="rows"
        cancelling={cancelling.isPending || cancelling.isSuccess}
        {...(may && !offline ? { onCancel: () => cancelling.mutate({ id: file.id }) } : {})}
      />
      {cancelling.error !== null && <ProblemPanel error={cancelling.error} doing="Stopping the work" />}
    </>
  );
}

function Apply(props: ImportActsProps) {
  const { file } = props;
  const applying = useAct({
    perform: (words: { readonly id: string; readonly version: number }, headers: ActHeaders) =>
      applyFile(words, headers),
    refresh: [IMPORTS_KEY, FLEET_KEY, COMPONENTS_KEY, ['flights'], ['history']],
  });
  const leaving = useAct({ perform: cancelFile, refresh: [IMPORTS_KEY] });
  const { error } = applying;
  const apply = () => applying.mutate({ id: file.id, version: file.version });
  if (error instanceof ProblemError && CHANGED.has(error.status)) {
    return (
      <ConflictPanel
        recordedBy="Read again just now"
        lines={[
          { term: 'File', yours: 'Apply', onRecord: STATE_WORDS[file.state], differs: true },
          { term: 'New rows', yours: '', onRecord: String(file.ready), differs: false },
        ]}
        {...(file.state === 'checked' && whyOff(props) === null
          ? { onRecordMine: apply, recordMineWord: 'Apply what is on record now' }
          : {})}
        onDiscardMine={() => applying.reset()}
      />
    );
  }
  return (
    <>
      {error !== null && <ProblemPanel error={error} doing="Applying the file" />}
      <div className="row import-acts">
        <Button kind="primary" busy={applying.isPending} offBecause={whyOff(props)} onClick={apply}>
          Apply {counted(file.ready, 'flight')}
        </Button>
        <Button
          busy={leaving.isPending}
          offBecause={props.offline ? OFF_WHILE_OFFLINE : null}
          onClick={() => leaving.mutate({ id: file.id })}
        >
          Leave the file
        </Button>
      </div>
      {leaving.error !== null && <ProblemPanel error={leaving.error} doing="Leaving the file" />}
    </>
  );
}

/** What can be done with a file as it stands. */
export function ImportActs(props: ImportActsProps) {
  const { file, may } = props;
  if (isAtWork(file.state)) return <Progress {...props} />;
  return file.state === 'checked' && may ? <Apply {...props} /> : null;
}
