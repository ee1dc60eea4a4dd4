package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * An entry of the bibliography.
 *
 * @param id short stable name by which rules and catalogues cite it
 * @param title title of the work
 * @param author author, "not stated" where the source gives none
 * @param year year of publication, null where unknown
 * @param grade A paper, agency or standard; B textbook, encyclopaedia or association; C web page
 * @param address where it can be read, null if only in print
 * @param lineage sources that share a table share this name and count once, null if alone
 * @param language code of the language it is written in, null for English
 * @param note what to know about it, null if nothing
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Source(
    String id,
    String title,
    String author,
    Integer year,
    String grade,
    String address,
    String lineage,
    String language,
    String note) {

  /** The word that stands for a fact of the trade for which no publication is cited. */
  public static final String COMMON_PRACTICE = "common practice";

  /** The name under which it counts as a witness: of its lineage, or its own where it has none. */
  public String witness() {
    return lineage == null ? id : lineage;
  }

  /** The source as a short citation: author, title, year. */
  public String cited() {
    StringBuilder words = new StringBuilder();
    if (author != null && !author.equals("not stated")) {
      words.append(author).append(", ");
    }
    words.append(title);
    if (year != null) {
      words.append(", ").append(year);
    }
    return words.toString();
  }
}
