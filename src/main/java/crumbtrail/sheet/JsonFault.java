package crumbtrail.sheet;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in plain words why a text is no JSON; the parser's own words are for programmers. */
final class JsonFault {
  private static final String LOOK =
      "look at this place for a missing comma, bracket or quotation mark";

  /** What the parser says, what is told instead (with what was caught), and what would do. */
  private record Plain(Pattern parser, String what, String remedy) {
    static Plain of(String parser, String what, String remedy) {
      return new Plain(Pattern.compile(parser, Pattern.DOTALL), what, remedy);
    }
  }

  private static final List<Plain> PLAIN =
      List.of(
          Plain.of(
              "Duplicate field '(.{1,60}).*'.*",
              "the key “$1” is there twice",
              "keep one of the two; several entries stand in one list"),
          Plain.of(
              "Trailing token.*",
              "something follows after the end of the sheet",
              "write one sheet; many stand one a line in a file for batch"),
          Plain.of(
              "Non-standard token '(\\w+)'.*",
              "$1 is no number that a sheet can hold",
              "write the amount in quotation marks with its unit, such as \"500 g\""),
          Plain.of(
              ".*closing quote.*", "a text is not closed", "write the quotation mark at its end"),
          Plain.of(
              "Unexpected character \\(''' .*",
              "a single quotation mark stands where a double one should",
              "write \" around keys and texts"),
          Plain.of(
              ".*was expecting double-quote to start field name.*",
              "a key has no quotation marks",
              "write \" around each key, such as \"formula\""),
          Plain.of(
              "Unexpected end-of-input.*",
              "the text ends before the sheet does",
              "close what is open with ] or }"),
          Plain.of(
              "Unexpected close marker '(.)': expected '(.)'.*", "$1 stands where $2 should", LOOK),
          Plain.of(
              "Unexpected character \\('(.)'.*expected a valid value.*",
              "$1 stands where a text, a list or an object should",
              LOOK),
          Plain.of(
              "Unrecognized token '(.{1,60}).*': was.*",
              "“$1” stands there without quotation marks",
              "write texts in quotation marks; a sheet begins with {"));

  private JsonFault() {}

  /** The problem with a text. */
  static Problem of(JsonProcessingException fault) {
    JsonLocation place = fault.getLocation();
    String at =
        place == null ? "" : "line " + place.getLineNr() + ", column " + place.getColumnNr();
    String said = String.valueOf(fault.getOriginalMessage());
    for (Plain plain : PLAIN) {
      Matcher matcher = plain.parser().matcher(said);
      if (matcher.matches()) {
        return new Problem(
            at, "this is not JSON: " + matcher.replaceFirst(plain.what()), plain.remedy());
      }
    }
    return new Problem(at, "this is not JSON: " + Nodes.shown120(said), LOOK);
  }
}
