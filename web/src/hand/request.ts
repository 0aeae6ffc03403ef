// A request that travels from phone to phone: the payload of its JWS. The server checks every field of it.

export interface HandedRequest {
  production: string;
  person: string;
  device: string;
  made_at: string;
  key: string;
  method: string;
  path: string;
  if_match?: string;
  body: Record<string, unknown>;
}
