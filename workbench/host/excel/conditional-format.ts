import { type ConditionalFormatRecord, removeRecord } from "./book-records";
import { ClientObject, declareProperties, type Properties } from "./client-object";
import type { Range } from "./range";

const formatProperties: Properties<ConditionalFormatRecord, ConditionalFormat> = {
  id: { get: ({ id }) => id },
  type: { get: ({ type }) => type },
  priority: { get: (record, { context }) => context.records.conditionalFormats.indexOf(record) },
  stopIfTrue: {
    get: ({ stopIfTrue }) => stopIfTrue,
    set: (record, value) => { record.stopIfTrue = value === true; },
  },
};

/** A format that depends on the cell's value, text, or a formula. */
export class ConditionalFormat extends ClientObject<ConditionalFormatRecord> {
  protected override readonly properties = formatProperties;

  get cellValue(): ConditionalRule { return this.inner("cellValue", () => this.rule("CellValue", false)); }
  get cellValueOrNullObject(): ConditionalRule { return this.inner("cellValueOrNullObject", () => this.rule("CellValue", true)); }
  get textComparison(): ConditionalRule { return this.inner("textComparison", () => this.rule("ContainsText", false)); }
  get textComparisonOrNullObject(): ConditionalRule { return this.inner("textComparisonOrNullObject", () => this.rule("ContainsText", true)); }
  get custom(): CustomRule { return this.inner("custom", () => new CustomRule(this.context, this.ofType("Custom"))); }
  get customOrNullObject(): CustomRule { return this.inner("customOrNullObject", () => new CustomRule(this.context, this.ofType("Custom"), true)); }

  getRange(): Range { return this.context.make.range(this.context, () => this.target.area); }

  delete(): void {
    this.write(() => {
      removeRecord(this.context.records.conditionalFormats, this.target);
      this.context.records.onChange();
    });
  }

  private rule(type: ConditionalFormatRecord["type"], mayBeAbsent: boolean): ConditionalRule {
    return new ConditionalRule(this.context, this.ofType(type), mayBeAbsent);
  }

  private ofType(type: ConditionalFormatRecord["type"]): () => ConditionalFormatRecord | undefined {
    return () => (this.targetIfAny?.type === type ? this.targetIfAny : undefined);
  }
}

declareProperties(ConditionalFormat, formatProperties);

/** The look that a rule gives to the cells it meets. */
abstract class ConditionalLook extends ClientObject<ConditionalFormatRecord> {
  get format(): { readonly fill: ConditionalColor; readonly font: ConditionalColor; readonly borders: ConditionalBorders } {
    return this.inner("format", () => ({
      fill: new ConditionalColor(this, "fill"),
      font: new ConditionalColor(this, "color"),
      borders: { getItem: (edge: string) => new ConditionalBorder(this, edge) },
    }));
  }
}

const ruleProperties: Properties<ConditionalFormatRecord, ConditionalRule> = {
  rule: {
    get: ({ rule }) => rule,
    set: (record, rule, { context }) => {
      record.rule = { ...(rule as Record<string, unknown>) };
      context.records.onChange();
    },
  },
};

/** A rule on the cell's value or on the text in it. */
class ConditionalRule extends ConditionalLook {
  protected override readonly properties = ruleProperties;
}

declareProperties(ConditionalRule, ruleProperties);

/** A rule given as a formula. */
class CustomRule extends ConditionalLook {
  protected override readonly properties = {};
  get rule(): RuleFormula { return this.inner("rule", () => new RuleFormula(this.context, () => this.targetIfAny, true)); }
}

const formulaProperties: Properties<ConditionalFormatRecord, RuleFormula> = {
  formula: {
    get: ({ rule }) => rule?.["formula"] ?? "",
    set: (record, formula, { context }) => {
      record.rule = { formula };
      context.records.onChange();
    },
  },
};

class RuleFormula extends ClientObject<ConditionalFormatRecord> {
  protected override readonly properties = formulaProperties;
}

declareProperties(RuleFormula, formulaProperties);

const colorProperties: Properties<ConditionalFormatRecord, ConditionalColor> = {
  color: {
    get: (record, { part }) => record[part] ?? "",
    set: (record, color, { context, part }) => {
      record[part] = String(color);
      context.records.onChange();
    },
  },
  bold: { get: ({ bold }) => bold ?? false, set: (record, bold) => { record.bold = bold === true; } },
  italic: { get: ({ italic }) => italic ?? false, set: (record, italic) => { record.italic = italic === true; } },
};

class ConditionalColor extends ClientObject<ConditionalFormatRecord> {
  protected override readonly properties = colorProperties;

  constructor(owner: ConditionalLook, readonly part: "fill" | "color") {
    super(owner.context, () => owner.targetIfAny, true);
  }
}

declareProperties(ConditionalColor, colorProperties);

interface ConditionalBorders {
  readonly getItem: (edge: string) => ConditionalBorder;
}

const borderProperties: Properties<ConditionalFormatRecord, ConditionalBorder> = {
  style: {
    get: ({ borders }, { edge }) => borders?.[edge] ?? "None",
    set: (record, style, { edge }) => { record.borders = { ...record.borders, [edge]: String(style) }; },
  },
  color: { set: () => undefined },
};

class ConditionalBorder extends ClientObject<ConditionalFormatRecord> {
  protected override readonly properties = borderProperties;

  constructor(owner: ConditionalLook, readonly edge: string) {
    super(owner.context, () => owner.targetIfAny, true);
  }
}

declareProperties(ConditionalBorder, borderProperties);
