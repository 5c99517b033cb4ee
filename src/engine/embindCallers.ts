/** A type that OpenCV's glue has bound, as far as a call needs it. */
interface BoundType {
  name: string;
  isVoid?: boolean;
  argPackAdvance: number;
  /** Undefined: values are freed by the list of destructors; null: nothing is to be freed. */
  destructorFunction?: ((wired: unknown) => void) | null;
  toWireType(destructors: unknown[] | null, value: unknown): unknown;
  fromWireType(wired: unknown): unknown;
  readValueFromPointer(pointer: number): unknown;
  deleteObject?(value: unknown): void;
}

type Callable = (...given: unknown[]) => unknown;
type MethodCaller = (handle: object, name: string, destructors: unknown[], pointer: number) => unknown;

interface Bound {
  humanName: string;
  /** What comes back, the class of `this` or null, then one type an argument. */
  argTypes: (BoundType | null)[];
  classType: object | null;
  invoker: Callable;
  target: unknown;
  runDestructors(destructors: unknown[]): void;
  throwBindingError(sentence: string): never;
}

/**
 * What OpenCV's glue otherwise writes as text and has evaluated: plain closures instead, so that a page whose policy
 * forbids eval can run it. The glue is told to use them by `withoutEval`.
 */
export const embindCallers = {
  named(name: string, body: Callable): Callable {
    const made = function (this: unknown, ...given: unknown[]) {
      return body.apply(this, given);
    };
    return Object.defineProperty(made, 'name', { value: name });
  },

  dynCaller(dynCall: Callable, rawFunction: number): Callable {
    return (...given) => dynCall(rawFunction, ...given);
  },

  /** A bound function or method: arguments out to WebAssembly, the call, what comes back, and the freeing. */
  invoker({ humanName, argTypes, classType, invoker, target, ...tell }: Bound): Callable {
    const [back, self, ...types] = argTypes as [BoundType, BoundType | null, ...BoundType[]];
    const method = self !== null && classType !== null;
    const wiredTypes = method ? [self, ...types] : types;
    const listed = argTypes.slice(1).some((type) => type !== null && type.destructorFunction === undefined);
    return function (this: unknown, ...given) {
      if (given.length !== types.length) {
        tell.throwBindingError(
          `function ${humanName} called with ${given.length} arguments, expected ${types.length} args!`,
        );
      }
      const destructors = listed ? [] : null;
      const values = method ? [this, ...given] : given;
      const wired = values.map((value, i) => wiredTypes[i].toWireType(destructors, value));
      const rv = invoker(target, ...wired);
      if (destructors) tell.runDestructors(destructors);
      else wired.forEach((value, i) => wiredTypes[i].destructorFunction?.(value));
      return back.name === 'void' ? undefined : back.fromWireType(rv);
    };
  },

  /** A call from WebAssembly to a method of a JavaScript value, its arguments packed in memory. */
  methodCaller([back, ...types]: BoundType[]): MethodCaller {
    return (handle, name, destructors, pointer) => {
      let at = pointer;
      const values = types.map((type) => {
        const value = type.readValueFromPointer(at);
        at += type.argPackAdvance;
        return value;
      });
      const rv = (handle as Record<string, Callable>)[name](...values);
      types.forEach((type, i) => type.deleteObject?.(values[i]));
      return back.isVoid ? undefined : back.toWireType(destructors, rv);
    };
  },
};
