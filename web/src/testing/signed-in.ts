// Somebody signed in, for tests of what a phone reads and sends.

import { adoptSession } from '../api/client.ts';

/** What the server gives Ada for her password: a token for a quarter of an hour. */
export const adasSession = () => ({
  access_token: 'token',
  expires_at: new Date(Date.now() + 900_000).toISOString(),
  account: { id: 'ada', name: 'Ada', email: 'ada@salt-meridian.example' },
  memberships: [],
});

export const adaSignedIn = () => adoptSession(adasSession());
