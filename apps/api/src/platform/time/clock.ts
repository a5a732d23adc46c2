import { Injectable } from '@nestjs/common';

/** The one clock of the API beside the database's own; replaced in tests that need another hour. */
@Injectable()
export class Clock {
  now(): Date {
    return new Date();
  }
}
