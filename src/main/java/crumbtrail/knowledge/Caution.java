package crumbtrail.knowledge;

import java.util.List;

/**
 * What to be careful about.
 *
 * @param key stable name
 * @param words the caution, deferring to local food law and qualified advice; {allergens} and
 *     {perishable} in it stand for what the sheet holds
 * @param when the facts that call for it, any of them: "sign KEY", "circumstance KEY", "cause KEY"
 *     (among the likely ones), "reading NAME" (above nought); "ingredient", "vessel", "keeping" or
 *     "remark" and whole words; "warm perishable", "allergens" or "always"
 * @param source ids of the bibliography or "common practice"
 */
public record Caution(String key, String words, List<String> when, String source) {
  public Caution {
    when = when == null ? List.of() : List.copyOf(when);
  }
}
