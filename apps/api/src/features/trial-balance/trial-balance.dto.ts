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
  /** What was run there on the ground and counts. */
  runs!: CountsDto;
  /** What the engines there took. */
  onEngines!: CountsDto;
  /** What passed while no engine was there. */
  empty!: CountsDto;
  /** What the engine there did not run. */
  notRunning!: CountsDto;
  /** Flown and run less all the rest; anything but zero was lost or made up. */
  difference!: CountsDto;
}

/** The accounts of one test cell. */
export class CellBalanceDto {
  testCellId!: string;
  name!: string;
  /** What was run in it and counts. */
  ran!: CountsDto;
  /** What the engines in it took. */
  taken!: CountsDto;
  /** What was run while no engine is recorded there. */
  notTaken!: CountsDto;
  difference!: CountsDto;
}

/** The accounts of the counter of one auxiliary power unit. */
export class CounterBalanceDto {
  componentId!: string;
  serialNumber!: string;
  /** What the counter counted, from reading to reading. */
  ran!: CountsDto;
  /** What the unit took. */
  taken!: CountsDto;
  /** What it counted before the unit's opening balance, which holds it already. */
  notTaken!: CountsDto;
  difference!: CountsDto;
}

/** The trial balance of the records. */
export class TrialBalanceDto {
  asOf!: string;
  /** True when every difference is zero. */
  balanced!: boolean;
  rows!: BalanceRowDto[];
  cells!: CellBalanceDto[];
  counters!: CounterBalanceDto[];
}
