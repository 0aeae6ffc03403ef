// Which screen is asked for. Paths are real paths: the server answers navigations with this page.

class Router {
  path = $state(location.pathname);
  query = $state.raw(new URLSearchParams(location.search));
  hash = $state(location.hash);

  constructor() {
    window.addEventListener('popstate', () => this.#sync());
    document.addEventListener('click', (event) => this.#click(event));
  }

  #sync(): void {
    this.path = location.pathname;
    this.query = new URLSearchParams(location.search);
    this.hash = location.hash;
  }

  go(to: string, options: { replace?: boolean } = {}): void {
    if (options.replace) history.replaceState(null, '', to);
    else history.pushState(null, '', to);
    this.#sync();
    window.scrollTo(0, 0);
  }

  /** Plain links work as links; this only saves the page load. */
  #click(event: MouseEvent): void {
    if (event.defaultPrevented || event.button !== 0) return;
    if (event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    const link = (event.target as Element | null)?.closest('a');
    if (!link || link.target || link.hasAttribute('download') || link.origin !== location.origin) return;
    if (link.pathname.startsWith('/api/')) return;
    if (link.hash && link.pathname === location.pathname && link.search === location.search) return;
    event.preventDefault();
    this.go(link.pathname + link.search + link.hash);
  }
}

export const router = new Router();

/** Matches `/gags/:gag/edit` against a path; answers the named parts. */
export function match(pattern: string, path: string): Record<string, string> | undefined {
  const want = pattern.split('/').filter(Boolean);
  const have = path.split('/').filter(Boolean);
  if (want.length !== have.length) return undefined;
  const parts: Record<string, string> = {};
  for (const [i, piece] of want.entries()) {
    const given = have[i] ?? '';
    if (piece.startsWith(':')) {
      try {
        parts[piece.slice(1)] = decodeURIComponent(given);
      } catch {
        return undefined;
      }
    } else if (piece !== given) return undefined;
  }
  return parts;
}
