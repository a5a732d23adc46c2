import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { utcMoment } from '../../format/utc-date.js';

const minuteNow = (): number => Math.floor(Date.now() / 60_000);

/** On paper alone: when it was printed, for what is on record may be otherwise by the time it is read. */
export function PrintedAt() {
  const [at, setAt] = useState(minuteNow);
  useEffect(() => {
    const look = () => flushSync(() => setAt(minuteNow()));
    window.addEventListener('beforeprint', look);
    return () => window.removeEventListener('beforeprint', look);
  }, []);
  return <p className="print-only small">Printed {utcMoment(at)} from the records as they stood then</p>;
}
