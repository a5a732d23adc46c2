// Placeholder until the types are written from the server's own description of its routes.
export interface paths {
  '/api/session': {
    parameters: { query?: never; header?: never; path?: never; cookie?: never };
    get: operations['readSession'];
    post: operations['signIn'];
    delete: operations['signOut'];
  };
  '/api/session/password': {
    parameters: { query?: never; header?: never; path?: never; cookie?: never };
    post: operations['changePassword'];
  };
}

export interface components {
  schemas: {
    SignedInPerson: { id: string; fullName: string; signInName: string; roles: string[] };
    OperatorName: { code: string; name: string };
    Session: {
      person: components['schemas']['SignedInPerson'];
      operator: components['schemas']['OperatorName'];
      csrfToken: string;
      mustChangePassword: boolean;
    };
    SignIn: { signInName: string; password: string; operatorCode?: string };
    PasswordChange: { currentPassword: string; newPassword: string };
  };
}

export interface operations {
  readSession: {
    parameters: { query?: never; header?: never; path?: never; cookie?: never };
    requestBody?: never;
    responses: { 200: { headers: Record<string, unknown>; content: { 'application/json': components['schemas']['Session'] } } };
  };
  signIn: {
    parameters: { query?: never; header?: never; path?: never; cookie?: never };
    requestBody: { content: { 'application/json': components['schemas']['SignIn'] } };
    responses: { 200: { headers: Record<string, unknown>; content: { 'application/json': components['schemas']['Session'] } } };
  };
  signOut: {
    parameters: { query?: never; header?: never; path?: never; cookie?: never };
    requestBody?: never;
    responses: { 204: { headers: Record<string, unknown>; content?: never } };
  };
  changePassword: {
    parameters: { query?: never; header?: never; path?: never; cookie?: never };
    requestBody: { content: { 'application/json': components['schemas']['PasswordChange'] } };
    responses: { 204: { headers: Record<string, unknown>; content?: never } };
  };
}
