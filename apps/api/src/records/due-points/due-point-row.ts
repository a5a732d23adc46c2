/** A row of the projection: where on its clock or calendar something falls due, or why that can't be told. */
export interface DuePointRow {
  /** What it is about: exactly one of a component, an airframe and a position. */
  readonly componentId: string | null;
  readonly airframeId: string | null;
  readonly positionId: string | null;
  readonly engineId: string | null;
  readonly carrierId: string | null;
  readonly kind: 'life-limit' | 'counters' | 'requirement';
  readonly verdict: 'limited' | 'not-verified' | 'not-authorised';
  /** 'flights' are the cycles of airframes, positions and pods: one each; an 'event' happened on the day it was due. */
  readonly dimension: 'minutes' | 'cycles' | 'flights' | 'days' | 'months' | 'event' | 'none';
  readonly cycleRuleId: string | null;
  readonly lifeLimitId: string | null;
  readonly requirementId: string | null;
  /** What a requirement grants: minutes, cycles, days or months. */
  readonly span: number | null;
  readonly dueAt: number | null;
  /** The last day it is good through. */
  readonly dueOn: Date | null;
  /** The last reading, or day, inside what is granted past that; null: nothing is. */
  readonly latestAt: number | null;
  readonly latestOn: Date | null;
  /** Whether it is of an outer bound. */
  readonly bound: boolean;
  readonly flagged: boolean;
  readonly reason: string | null;
}
