import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { minuteNow } from '../../format/now.js';
import { utcMoment } from '../../format/utc-date.js';

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
