// A package released as its certifier would: the check read, then the password or the PIN given.

/**
 * Answers a line that tells the release. `by`: 'password' or 'pin'. Throws when something forbids the release, or with
 * `orLeave` answers that it was left open: what is due by the calendar may be over when this is loaded years later.
 */
export async function release({ client, password, pin }, { id }, { by = 'password', orLeave = false } = {}) {
  const { body, tag } = await client.getTagged(`/api/packages/${id}`);
  if (body.status === 'released') return ', released before';
  const check = await client.get(`/api/packages/${id}/release-check`);
  const blocking = check.objections.filter(({ severity }) => severity === 'blocking');
  if (blocking.length > 0 && orLeave) return `, left open: ${blocking[0].reason}`;
  if (blocking.length > 0)
    throw new Error(
      `package ${body.number} can't be released:\n${blocking.map(({ reason }) => `  ${reason}`).join('\n')}`,
    );
  const proof = by === 'pin' ? { pin } : { password };
  const { number } = await client.post(
    `/api/packages/${id}/release`,
    { ...proof, digest: check.digest },
    { ifMatch: tag },
  );
  return `, released as ${number}`;
}
