/** Whether the service can be asked. */
export class HealthDto {
  status!: 'live' | 'ready';
}
