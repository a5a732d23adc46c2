import http from 'node:http';
import { TOKEN } from '../ids.mjs';

const agent = new http.Agent({ keepAlive: true, maxSockets: 1 });

/** Sends requests of the filling's person over one kept connection: (method, path, body, key) to {status, text}. */
export function signedIn(baseUrl) {
  const { hostname, port } = new URL(baseUrl);
  return (method, path, body, key) =>
    new Promise((resolve, reject) => {
      const headers = {
        cookie: `session=${TOKEN}`,
        'x-csrf-token': 'bench-token',
        ...(key === undefined ? {} : { 'idempotency-key': key }),
        ...(body === undefined
          ? {}
          : { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) }),
      };
      const request = http.request({ agent, hostname, port, method, path, headers }, (answer) => {
        let text = '';
        answer.setEncoding('utf8').on('data', (part) => (text += part));
        answer.on('end', () => resolve({ status: answer.statusCode, text }));
        answer.on('error', reject);
      });
      request.on('error', reject).end(body);
    });
}
