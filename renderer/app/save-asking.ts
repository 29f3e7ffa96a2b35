import type { Reply } from '../../shared/contract/messages.ts';

export interface HowToSave {
  /** Under a name that is asked for. */
  readonly askWhere: boolean;
  /** Also over what another program wrote to the file meanwhile. */
  readonly replaceChanged: boolean;
}

type Saved = Reply<'document.save'>;

const ELSEWHERE = 'Save under another name';
const REPLACE = 'Replace it';

/** Saves, and where somebody else has written to the file meanwhile asks what to do. `ask`: as in Question.tsx. */
export async function saveAsking(
  saveOnce: (how: HowToSave) => Promise<Saved>,
  ask: (title: string, text: string, answers: readonly string[]) => Promise<string | null>,
  askWhere: boolean,
): Promise<Saved> {
  const reply = await saveOnce({ askWhere, replaceChanged: false });
  if (!reply.ok || !('changedOutside' in reply)) return reply;
  const chosen = await ask(
    'The file was changed elsewhere',
    `"${reply.changedOutside}" is no longer as you opened or last saved it: another program, or somebody at another machine, has written to it since. Save your work under another name to keep both, or replace what they wrote; their version then stays beside it as a ".previous" file.`,
    [ELSEWHERE, REPLACE, 'Do not save now'],
  );
  if (chosen === ELSEWHERE) return saveOnce({ askWhere: true, replaceChanged: false });
  return chosen === REPLACE ? saveOnce({ askWhere: false, replaceChanged: true }) : reply;
}
