package crumbtrail.handbook;

import crumbtrail.rules.WrittenRule;
import crumbtrail.rules.WrittenRule.Verdict;

/**
 * One rule's word on one cause.
 *
 * @param rule the rule
 * @param verdict what it says of the cause
 * @param decibans its weight, below nought if it speaks against
 */
record Words(WrittenRule rule, Verdict verdict, double decibans) {}
