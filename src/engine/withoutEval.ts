/** Each place at which the glue evaluates text, and what stands there instead; `embind` is embindCallers. */
const places: [from: string, to: string][] = [
  [
    `return new Function("body","return function "+name+"() {\\n"+'    "use strict";'+"    return body.apply(this, arguments);\\n"+"};\\n")(body)`,
    'return embind.named(name,body)',
  ],
  [
    'return new Function("dynCall","rawFunction",body)(dynCall,rawFunction)',
    'return embind.dynCaller(dynCall,rawFunction)',
  ],
  [
    'new_(Function,args1).apply(null,args2)',
    'embind.invoker({humanName:humanName,argTypes:argTypes,classType:classType,invoker:cppInvokerFunc,target:cppTargetFunc,runDestructors:runDestructors,throwBindingError:throwBindingError})',
  ],
  ['new_(Function,params).apply(null,args)', 'embind.methodCaller(types)'],
];

/**
 * OpenCV's glue with nothing in it that evaluates text.
 * @throws Error when the glue is built otherwise than release 4.12 is
 */
export function withoutEval(glue: string): string {
  const freed = places.reduce((text, [from, to]) => {
    if (text.split(from).length !== 2) throw new Error(`The OpenCV glue has no single "${from}".`);
    return text.replace(from, () => to);
  }, glue);
  if (/new Function|new_\(Function|[^\w.]eval\(/.test(freed))
    throw new Error('The OpenCV glue evaluates text.');
  return freed;
}
