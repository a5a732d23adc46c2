/** Minutes and counted events. */
export class CountsDto {
  minutes!: number;
  flights!: number;
  landings!: number;
  touchAndGoes!: number;
  starts!: number;
  abortedTakeOffs!: number;
}

/** The accounts of one position of one airframe. */
export class BalanceRowDto {
  airframeId!: string;
  registration!: string;
  positionId!: string;
  positionNumber!: number;
  /** What the airframe flew. */
  flown!: CountsDto;
  /** What the engines there took. */
  onEngines!: CountsDto;
  /** What passed while no engine was there. */
  empty!: CountsDto;
  /** What the engine there did not run. */
  notRunning!: CountsDto;
  /** Flown less all the rest; anything but zero was lost or made up. */
  difference!: CountsDto;
}

/** The trial balance of the records. */
export class TrialBalanceDto {
  asOf!: string;
  /** True when every difference is zero. */
  balanced!: boolean;
  rows!: BalanceRowDto[];
}
