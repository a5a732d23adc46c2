import { thousands } from './hours.js';

/** 7981 -> '7,981 cycles', 1 -> '1 cycle'. */
export function cycles(count: number): string {
  return counted(count, 'cycle');
}

/** A count with its noun: counted(1, 'finding') -> '1 finding', counted(0, 'finding') -> '0 findings'. */
export function counted(count: number, singular: string, plural = `${singular}s`): string {
  return `${thousands(count)} ${Math.abs(count) === 1 ? singular : plural}`;
}
