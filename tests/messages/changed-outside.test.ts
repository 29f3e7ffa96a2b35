import { describe, expect, test } from 'vitest';
import { saveAsking, type HowToSave } from '../../renderer/app/save-asking.ts';
import type { Reply } from '../../shared/contract/messages.ts';

const CHANGED = { ok: true, cancelled: true, changedOutside: 'kitchen.overhang' } as const;
const SAVED = { ok: true, cancelled: false, name: 'kitchen.overhang', handle: 'h' } as const;

/** A save of a file that was changed outside, with what is answered to the question. */
async function saved(answer: string | null, first: Reply<'document.save'> = CHANGED) {
  const sent: HowToSave[] = [];
  const asked: string[] = [];
  const saveOnce = async (how: HowToSave): Promise<Reply<'document.save'>> => {
    sent.push(how);
    return sent.length === 1 ? first : SAVED;
  };
  const ask = async (title: string, text: string, answers: readonly string[]): Promise<string | null> => {
    asked.push([title, text, ...answers].join('\n'));
    return answer;
  };
  return { reply: await saveAsking(saveOnce, ask, false), sent, asked };
}

const ONCE = { askWhere: false, replaceChanged: false };

describe('saveAsking', () => {
  test('asks in words that name the file and each way out, and saves nothing when put off', async () => {
    for (const answer of [null, 'Do not save now']) {
      const { reply, sent, asked } = await saved(answer);
      expect([reply, sent]).toEqual([CHANGED, [ONCE]]);
      expect(asked).toHaveLength(1);
      for (const words of [
        '"kitchen.overhang" is no longer as you',
        'Save under another name',
        'Replace it',
      ]) {
        expect(asked[0]).toContain(words);
      }
    }
  });

  test('replaces the file only when that was chosen', async () => {
    const { reply, sent } = await saved('Replace it');
    expect([reply, sent]).toEqual([SAVED, [ONCE, { askWhere: false, replaceChanged: true }]]);
  });

  test('asks where when another name was chosen', async () => {
    const { reply, sent } = await saved('Save under another name');
    expect([reply, sent]).toEqual([SAVED, [ONCE, { askWhere: true, replaceChanged: false }]]);
  });

  test('asks nothing of a save that went through, was cancelled or failed', async () => {
    for (const first of [SAVED, { ok: true, cancelled: true }, { ok: false, reason: 'full' }] as const) {
      const { reply, sent, asked } = await saved('Replace it', first);
      expect([reply, sent, asked]).toEqual([first, [ONCE], []]);
    }
  });
});
