package crumbtrail.bakelog;

/**
 * What a trace of the bake said.
 *
 * @param report the report as JSON on one line
 * @param ruleBase version of the rules that said it
 */
public record Traced(String report, String ruleBase) {}
