interface Subject {
  readonly airframeId: string | null;
  readonly positionId: string | null;
  readonly componentId: string | null;
}

/** What something is held against, as it is sent: the one of the three that is told. */
export function heldOn({ airframeId, positionId, componentId }: Subject): {
  readonly airframeId?: string;
  readonly positionId?: string;
  readonly componentId?: string;
} {
  return {
    ...(componentId === null ? {} : { componentId }),
    ...(positionId === null ? {} : { positionId }),
    ...(airframeId === null ? {} : { airframeId }),
  };
}
