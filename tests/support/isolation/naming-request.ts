/** A request that names something: by its route in the contract, the address, and the body. */
export interface NamingRequest {
  readonly route: string;
  readonly path: string;
  readonly body?: object;
  readonly headers?: Readonly<Record<string, string>>;
}

/** A reading of the record with this id. */
export function get(route: string, id: string): NamingRequest {
  return { route: `GET ${route}`, path: route.replace(/\{\w+\}/, id) };
}

/** An act, on the record with this id where the route names one. */
export function post(route: string, body: object, id = ''): NamingRequest {
  return { route: `POST ${route}`, path: route.replace(/\{\w+\}/, id), body };
}
