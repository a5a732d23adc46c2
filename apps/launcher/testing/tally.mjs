/** Passed, failed and skipped, over everything that `npm test` does. */
export class Tally {
  passed = 0;
  failed = 0;
  skipped = 0;

  add({ passed = 0, failed = 0, skipped = 0 }) {
    this.passed += passed;
    this.failed += failed;
    this.skipped += skipped;
  }

  /** The closing line, which CI reads. */
  line() {
    return `${this.passed} passed, ${this.failed} failed${this.skipped > 0 ? `, ${this.skipped} skipped` : ''}`;
  }
}
