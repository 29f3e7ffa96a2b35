import laser6 from '../assets/machines/laser-6.json' with { type: 'json' };
import frameUndermount from '../assets/standards/face-frame-undermount.json' with { type: 'json' };

/** A document of the library, by the name that a command takes. */
interface Shipped {
  readonly name: string;
  readonly json: unknown;
}

/** The shop standard and the machine profile that an order begins with; the page needs no others to start. */
export const FIRST_STANDARD: Shipped = { name: 'face-frame-undermount', json: frameUndermount };
export const FIRST_MACHINE: Shipped = { name: 'laser-6', json: laser6 };
