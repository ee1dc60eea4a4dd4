/**
 * Turning one knob of a bake and watching what moves, loaves that failed for a hidden reason, and a
 * course of lessons. Every what-if is the same pipeline on an altered sheet.
 */
package crumbtrail.lessons;
