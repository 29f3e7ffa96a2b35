import { setDesigned } from '../store/changes.ts';
import { useProgram } from '../store/use-program.ts';
import { createDesignClient, type DesignClient } from '../worker/client.ts';
import { firstPicture } from './first-picture.ts';
import { useNotices } from './notices.ts';

let client: DesignClient | null = null;

/** The program's one line to the worker that designs; every draft goes down it as soon as it changes. */
export function designLine(): DesignClient {
  if (client !== null) return client;
  const line = createDesignClient(
    setDesigned,
    (reason) => useNotices.getState().tell(`The program failed while it worked this out: ${reason}`),
    () => firstPicture('space'),
  );
  line.design(useProgram.getState().draft);
  useProgram.subscribe((state, before) => {
    if (state.draft !== before.draft) line.design(state.draft);
  });
  client = line;
  return line;
}
