import { utcTime } from '../../format/utc-date.js';
import './messages.css';

interface OfflineBarProps {
  /** Instants in minutes. */
  readonly since: number;
  readonly dataFrom?: number | null | undefined;
}

/** The reason that offline acts give for being off. */
export const OFF_WHILE_OFFLINE = 'Off while there is no connection';

/** Says how old what is shown is, and what cannot be done now. */
export function OfflineBar({ since, dataFrom }: OfflineBarProps) {
  return (
    <div className="offline-bar" role="status">
      <strong>Offline since {utcTime(since)}.</strong>
      {typeof dataFrom === 'number' && <span>Showing data from {utcTime(dataFrom)}.</span>}
      <span>Signing, releasing and applying imports are off.</span>
    </div>
  );
}
