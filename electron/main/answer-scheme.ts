import { answerPage, plain, type PageAnswer } from '../pages/answer-page.ts';
import { ORIGIN } from './scheme.ts';

/** Answers requests of the page's own scheme from the folder of the built page. */
export async function answerScheme(root: string, request: Request): Promise<Response> {
  const { status, headers, body } = await answer(root, request);
  return new Response(body, { status, headers });
}

async function answer(root: string, { url, method }: Request): Promise<PageAnswer> {
  // Read as text: an address parser resolves `..` before anyone could refuse it.
  if (!url.startsWith(`${ORIGIN}/`)) return plain(404, 'There is no such place.');
  const [pathname = ''] = url.slice(ORIGIN.length).split(/[?#]/);
  return answerPage(root, method, pathname);
}
