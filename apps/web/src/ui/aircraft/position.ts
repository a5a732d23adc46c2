import type { Status } from '../status/statuses.js';

export type Mount = 'left-wing' | 'right-wing' | 'tail';

/** A place for an engine or an APU, as the airframe's type has it, and what stands in it. */
export interface PlacedPosition {
  readonly number: number;
  readonly kind: 'engine' | 'apu';
  readonly mount: Mount;
  /** 'Position 1', 'APU'. */
  readonly label: string;
  /** Null when nothing is installed. */
  readonly serial: string | null;
  readonly status: Status;
}

const MOUNT_WORDS: Readonly<Record<Mount, string>> = {
  'left-wing': 'left wing',
  'right-wing': 'right wing',
  tail: 'tail',
};

/** 'left wing' */
export const mountWords = (mount: Mount): string => MOUNT_WORDS[mount];
