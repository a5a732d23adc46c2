import { IsInt, Max, Min } from 'class-validator';

/** What the counter of an auxiliary power unit shows. */
export class CounterFiguresDto {
  /** Whole minutes of running. */
  @IsInt()
  @Min(0)
  @Max(100_000_000)
  minutes!: number;

  @IsInt()
  @Min(0)
  @Max(10_000_000)
  starts!: number;
}
