/** The law an airframe is maintained under, as dated data. */
export class RuleSetDto {
  code!: string;
  name!: string;
  /** From this day on. */
  effectiveFrom!: string;
  /** What the signer of a release states. */
  releaseStatement!: string;
  source!: string;
  /** Where a counted day begins. */
  dayZone!: 'utc' | 'operator';
  /** Whether one person may inspect their own work again, where the case is recorded. */
  onePersonReinspection!: boolean;
  signerIdentity!: string;
}
