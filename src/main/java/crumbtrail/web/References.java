package crumbtrail.web;

import java.util.ArrayList;
import java.util.List;

/** Numbers sources in the order in which they are cited, each once. */
final class References {
  private final List<String> sources = new ArrayList<>();

  /** The number under which a source stands, as "[2]"; empty for no source. */
  String cite(String source) {
    if (source == null || source.isBlank()) {
      return "";
    }
    if (!sources.contains(source)) {
      sources.add(source);
    }
    return "[" + (sources.indexOf(source) + 1) + "]";
  }

  /** The sources by number, from 1. */
  List<String> list() {
    return List.copyOf(sources);
  }
}
