// Addresses of the API, typed from its description: a wrong address, a missing id, an answer or a body of
// another shape fails the type check. At run time an address is the plain path under `/api/v1`.

import type { paths } from './schema.d.ts';

type Routes = { [P in keyof paths as P extends `/api/v1${infer R}` ? R : never]: paths[P] };
type Method = 'get' | 'post' | 'put' | 'delete';
type Operation<R extends Route, M extends Method> = Routes[R][M];

/** An address as described, with names where the ids go: `/gags/{gag}`. */
export type Route = keyof Routes;

/** The routes that take a method. */
export type RouteOf<M extends Method> = {
  [R in Route]: Operation<R, M> extends { responses: unknown } ? R : never;
}[Route];

declare const described: unique symbol;
/** A path that was made from a route, and remembers which. */
export type Address<R extends Route = Route> = string & { readonly [described]: R };

type Json<T> = T extends { content: { 'application/json': infer Body } } ? Body : never;
type Responses<O> = O extends { responses: infer All } ? All[keyof All] : never;

/** What a good answer to a method carries; nothing where it is no JSON. */
export type Answer<R extends Route, M extends Method = 'get'> = Json<Responses<Operation<R, M>>>;

/** What a method's body has to be. */
export type Body<R extends Route, M extends Method> =
  Operation<R, M> extends { requestBody: infer Sent } ? Json<Sent> : undefined;

type Given<O, K extends 'path' | 'query'> = O extends { parameters: { [P in K]?: infer One } }
  ? Exclude<One, undefined>
  : never;
type Ids<R extends Route> = Given<Operation<R, Method>, 'path'>;
type Query<R extends Route> = Given<Operation<R, 'get'>, 'query'>;
type Asked<R extends Route> = ([Ids<R>] extends [never] ? unknown : Ids<R>) &
  ([Query<R>] extends [never] ? unknown : Query<R>);

/** The path of a route: ids go where the route names them, everything else is its query. */
export function at<R extends Route>(
  route: R,
  ...[asked]: unknown extends Asked<R> ? [] : Partial<Asked<R>> extends Asked<R> ? [Asked<R>?] : [Asked<R>]
): Address<R> {
  const query = new URLSearchParams();
  let path: string = route;
  for (const [name, value] of Object.entries(asked ?? {})) {
    if (value === undefined || value === null) continue;
    if (path.includes(`{${name}}`)) path = path.replace(`{${name}}`, encodeURIComponent(String(value)));
    else query.set(name, String(value));
  }
  return (query.size > 0 ? `${path}?${query}` : path) as Address<R>;
}
