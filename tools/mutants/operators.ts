import ts from "typescript";

/** A node and what is to stand in its place. */
export interface Replacement {
  readonly at: ts.Node;
  readonly to: string;
}

const { SyntaxKind: Kind } = ts;

/** Each operator and what a slip of the hand would make of it. */
const operators: Partial<Record<ts.SyntaxKind, readonly string[]>> = {
  [Kind.LessThanToken]: ["<=", ">="],
  [Kind.LessThanEqualsToken]: ["<", ">"],
  [Kind.GreaterThanToken]: [">=", "<="],
  [Kind.GreaterThanEqualsToken]: [">", "<"],
  [Kind.EqualsEqualsEqualsToken]: ["!=="],
  [Kind.ExclamationEqualsEqualsToken]: ["==="],
  [Kind.PlusToken]: ["-"],
  [Kind.MinusToken]: ["+"],
  [Kind.AsteriskToken]: ["/"],
  [Kind.SlashToken]: ["*"],
  [Kind.PercentToken]: ["*"],
  [Kind.AmpersandAmpersandToken]: ["||"],
  [Kind.BarBarToken]: ["&&"],
  [Kind.QuestionQuestionToken]: ["&&"],
  [Kind.PlusEqualsToken]: ["-="],
  [Kind.MinusEqualsToken]: ["+="],
};

/** Each call and the one it is mistaken for. */
const methods: Readonly<Record<string, string>> = {
  some: "every", every: "some", min: "max", max: "min", floor: "ceil", ceil: "floor",
  startsWith: "endsWith", endsWith: "startsWith",
};

/** Every change that is tried at a node itself, its children apart. */
export function replacements(node: ts.Node): Replacement[] {
  if (ts.isBinaryExpression(node)) return binary(node);
  if (ts.isIfStatement(node) || ts.isWhileStatement(node)) return condition(node.expression);
  if (ts.isConditionalExpression(node)) return condition(node.condition);
  if (ts.isPrefixUnaryExpression(node)) return prefix(node);
  if (ts.isNumericLiteral(node)) return number(node);
  if (ts.isStringLiteral(node)) return word(node);
  if (node.kind === Kind.TrueKeyword) return [{ at: node, to: "false" }];
  if (node.kind === Kind.FalseKeyword) return [{ at: node, to: "true" }];
  return ts.isCallExpression(node) ? call(node) : [];
}

const isText = (node: ts.Node): boolean => ts.isStringLiteral(node) || ts.isTemplateLiteral(node);

function binary({ left, operatorToken: at, right }: ts.BinaryExpression): Replacement[] {
  if (at.kind === Kind.PlusToken && (isText(left) || isText(right))) return [];
  return (operators[at.kind] ?? []).map((to) => ({ at, to }));
}

/** A condition that always holds, and one that never does. */
function condition(at: ts.Expression): Replacement[] {
  return [{ at, to: "true" }, { at, to: "false" }];
}

function prefix(node: ts.PrefixUnaryExpression): Replacement[] {
  const isMinus = node.operator === Kind.MinusToken && !ts.isNumericLiteral(node.operand);
  return node.operator === Kind.ExclamationToken || isMinus ? [{ at: node, to: node.operand.getText() }] : [];
}

function number(node: ts.NumericLiteral): Replacement[] {
  const value = Number(node.text);
  return [{ at: node, to: value === 0 ? "1" : `(${node.getText()} * 2)` }];
}

/**
 * A single word is a name, a unit or a row of a table. A sentence is for people, who read it in the tests of pages, and
 * so is the key of a source in brackets.
 */
function word(node: ts.StringLiteral): Replacement[] {
  const isName = ts.isPropertyAssignment(node.parent) && node.parent.name === node;
  const isForPeople = node.text.includes(" ") || /^\[.+\]$/.test(node.text);
  return isName || node.text === "" || isForPeople ? [] : [{ at: node, to: `"${node.text}~"` }];
}

function call({ expression, arguments: [only, ...others] }: ts.CallExpression): Replacement[] {
  if (!ts.isPropertyAccessExpression(expression)) return [];
  const { name } = expression;
  const other = methods[name.text];
  const swapped = other === undefined ? [] : [{ at: name, to: other }];
  const keepsAll = name.text === "filter" && only !== undefined && others.length === 0;
  return keepsAll ? [...swapped, { at: only, to: "() => true" }] : swapped;
}
