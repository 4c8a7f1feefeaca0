/**
 * Who may talk to the review: only the browser that opened the one-time address, and only from the page itself.
 * The token in the address is used up by its first use and becomes a cookie that scripts cannot read. Host is checked
 * so that no foreign name can point at this port, Origin so that no other page can send requests here.
 */
import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { Context, MiddlewareHandler } from 'hono';
import { getCookie, setCookie } from 'hono/cookie';

export interface SessionGuard {
  /** Makes an address that opens the page once. */
  newAddress(): string;
  readonly checkRequest: MiddlewareHandler;
  /** Answers "/" with a token in it; null when there is none. */
  useToken(context: Context): Response | null;
  hasSession(context: Context): boolean;
}

export function makeSessionGuard(port: number): SessionGuard {
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
  const origins = hosts.map((host) => `http://${host}`);
  // Cookies do not tell ports apart: the port in the name keeps two reviews from sharing one.
  const cookieName = `lineword-${port}`;
  const tokens = new Set<string>();
  const sessions = new Set<string>();

  const hasSession = (context: Context) => isAmong(sessions, getCookie(context, cookieName));
  return {
    hasSession,
    newAddress() {
      const token = randomBytes(24).toString('base64url');
      tokens.add(token);
      return `http://127.0.0.1:${port}/?token=${token}`;
    },
    async checkRequest(context, next) {
      if (!hosts.includes(context.req.header('host') ?? '')) return context.text('Wrong host.', 421);
      const origin = context.req.header('origin');
      const site = context.req.header('sec-fetch-site');
      if (origin !== undefined && !origins.includes(origin)) return context.text('Wrong origin.', 403);
      if (site !== undefined && site !== 'same-origin' && site !== 'none') return context.text('Wrong origin.', 403);
      if (context.req.method !== 'GET' && context.req.method !== 'HEAD' && context.req.path !== '/join') {
        if (origin === undefined) return context.text('Wrong origin.', 403);
      }
      await next();
    },
    useToken(context) {
      const token = context.req.query('token');
      if (token === undefined) return null;
      const found = isAmong(tokens, token);
      tokens.delete(token);
      if (!found) return hasSession(context) ? context.redirect('/', 303) : null;
      const session = randomBytes(32).toString('base64url');
      sessions.add(session);
      setCookie(context, cookieName, session, { httpOnly: true, sameSite: 'Strict', path: '/' });
      return context.redirect('/', 303);
    },
  };
}

/** The page may load only what this server gives it, and nothing may frame it. */
export function contentSecurityPolicy(nonce: string): string {
  return [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self' 'nonce-${nonce}'`,
    "img-src 'self'",
    "media-src 'self'",
    "font-src 'self'",
    "connect-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; ');
}

function isAmong(known: ReadonlySet<string>, given: string | undefined): boolean {
  if (!given) return false;
  const bytes = Buffer.from(given);
  let found = false;
  for (const one of known) {
    const other = Buffer.from(one);
    if (other.length === bytes.length && timingSafeEqual(other, bytes)) found = true;
  }
  return found;
}
