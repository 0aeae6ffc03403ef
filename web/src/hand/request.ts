// A request that travels from phone to phone: the payload of its JWS. The server checks every field of it.

import type { HandedRequest as Described } from '../api/types.ts';

/** As the API describes it; every request that may travel has an object for its body. */
export type HandedRequest = Omit<Described, 'body'> & { body: Record<string, unknown> };
