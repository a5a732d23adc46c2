import type { Person } from '../../platform/database/generated/client.js';
import { toWire } from '../../platform/http/instants.js';
import type { PersonDto } from './people.dto.js';

export function toPersonDto(person: Omit<Person, 'passwordHash' | 'pinHash'>): PersonDto {
  return {
    id: person.id,
    signInName: person.signInName,
    fullName: person.fullName,
    roles: person.roles,
    licence: person.licence,
    mustChangePassword: person.mustChangePassword,
    disabledAt: person.disabledAt === null ? null : toWire(person.disabledAt),
    version: person.version,
  };
}
