import type { SessionView } from '../../platform/access/sessions.js';
import type { SessionDto } from './session.dto.js';

/** A session as it is told. Total. */
export function toSessionDto(view: SessionView, hasPin: boolean): SessionDto {
  return {
    person: {
      id: view.personId,
      fullName: view.fullName,
      signInName: view.signInName,
      licence: view.licence,
      roles: [...view.roles],
    },
    operator: { code: view.operatorCode, name: view.operatorName },
    csrfToken: view.csrfToken,
    mustChangePassword: view.mustChangePassword,
    hasPin,
  };
}
