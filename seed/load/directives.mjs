// Directives and bulletins: what takes the place of what, whether it applies, and what was varied.
import { each, json } from './files.mjs';
import { asked, subjectOf } from './shop.mjs';

const AT_ONCE = 4;

/** After the requirements, whose ids by code are given and added to. Answers the line to tell. */
export async function directives(client, about, found) {
  const { requirements, assessments, accomplishments, variations } = json('register/directives.json');
  for (const { supersedes, ...requirement } of requirements) {
    const link = supersedes === undefined ? {} : { supersedesId: found[supersedes] };
    const { id } = await client.post('/api/requirements', { ...asked(requirement, about), ...link });
    found[requirement.code] = id;
  }
  const record =
    (path) =>
    async ({ code, serialNumber, ...fact }) => {
      const subject = serialNumber === undefined ? {} : subjectOf({ serialNumber }, about);
      await client.post(path, { requirementId: found[code], ...subject, ...fact });
    };
  await each(assessments, AT_ONCE, record('/api/assessments'));
  await each(accomplishments, AT_ONCE, record('/api/accomplishments'));
  await each(variations, AT_ONCE, record('/api/variations'));
  return `${requirements.length} more with ${assessments.length} assessments and ${variations.length} variation`;
}
