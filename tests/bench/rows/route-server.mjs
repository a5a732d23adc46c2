// The twin of a route: node:http and pg, the session by its token and the locations of its operator in one transaction.
import crypto from 'node:crypto';
import http from 'node:http';
import pg from 'pg';

const pool = new pg.Pool({ connectionString: process.env.DATABASE_URL, max: 4 });
const SESSION = { name: 'session', text: 'SELECT * FROM session_by_token($1)' };
const ENTER = { name: 'enter', text: "SELECT set_config('app.operator_id', $1, true)" };
const ROWS = {
  name: 'rows',
  text: 'SELECT id, name, kind FROM location WHERE operator_id = $1 ORDER BY name',
};

async function answer(request) {
  const token = /session=([^;]+)/.exec(request.headers.cookie ?? '')?.[1];
  const client = await pool.connect();
  try {
    const hash = crypto.createHash('sha256').update(token).digest();
    const [session] = (await client.query({ ...SESSION, values: [hash] })).rows;
    await client.query('BEGIN');
    await client.query({ ...ENTER, values: [String(session.operator_id)] });
    const { rows } = await client.query({ ...ROWS, values: [session.operator_id] });
    await client.query('COMMIT');
    return rows;
  } finally {
    client.release();
  }
}

const server = http.createServer((request, reply) => {
  answer(request).then(
    (rows) => reply.writeHead(200, { 'content-type': 'application/json' }).end(JSON.stringify(rows)),
    (error) => reply.writeHead(500).end(String(error)),
  );
});
server.listen(0, '127.0.0.1', () => process.send({ port: server.address().port }));
process.on('disconnect', () => process.exit(0));
