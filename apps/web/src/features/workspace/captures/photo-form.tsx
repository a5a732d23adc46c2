import type { PhotoCapture } from '@strutbook/domain/work/capture.js';
import { useEffect, useId, useState } from 'react';
import { Button } from '../../../ui/actions/button.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { summaryOf } from '../../../ui/messages/field-messages.js';
import { useEntryOff, useStepAct } from '../work/use-desk.js';
import { sendPhoto } from '../work/work-queries.js';
import type { Step } from '../work/work-shapes.js';

/** An address for the chosen picture while it is shown. */
function usePreview(file: File | null): string | null {
  const [url, setUrl] = useState<string | null>(null);
  useEffect(() => {
    if (file === null) {
      setUrl(null);
      return undefined;
    }
    const made = URL.createObjectURL(file);
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [file]);
  return url;
}

/** A picture, from the camera or from a file. It is sent as it is. */
export function PhotoForm({ step, capture }: { readonly step: Step; readonly capture: PhotoCapture }) {
  const id = useId();
  const off = useEntryOff();
  const [file, setFile] = useState<File | null>(null);
  const [round, setRound] = useState(0);
  const preview = usePreview(file);
  const act = useStepAct(sendPhoto, () => {
    setFile(null);
    setRound(round + 1);
  });
  const send = () => {
    if (file !== null)
      act.mutate({ stepId: step.id, capture: capture.key, file, name: file.name, size: file.size });
  };
  return (
    <div className="stack capture-form">
      <ErrorSummary messages={summaryOf(act.error)} />
      <div className="field">
        <label className="field-label" htmlFor={id}>
          Take or choose a picture
        </label>
        <span className="field-hint" id={`${id}-hint`}>
          JPEG, PNG or WebP, at most 8 MB
        </span>
        <input
          key={round}
          id={id}
          aria-describedby={`${id}-hint`}
          type="file"
          className="photo-input"
          accept="image/jpeg,image/png,image/webp"
          capture="environment"
          onChange={({ target }) => setFile(target.files?.[0] ?? null)}
        />
      </div>
      {preview !== null && <img className="photo-preview" src={preview} alt="To be recorded" />}
      {file !== null && (
        <div>
          <Button large onClick={send} offBecause={off} busy={act.isPending}>
            {act.isPending ? 'Sending' : 'Record the picture'}
          </Button>
        </div>
      )}
    </div>
  );
}
