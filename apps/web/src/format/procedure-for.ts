/** What a procedure is for, in words: 'V-840 airframes', 'Model K84'; null where it names neither. */
export function procedureFor({
  airframeType,
  engineModel,
}: {
  readonly airframeType: string | null;
  readonly engineModel: string | null;
}): string | null {
  if (airframeType !== null) return `${airframeType} airframes`;
  return engineModel === null ? null : `Model ${engineModel}`;
}
