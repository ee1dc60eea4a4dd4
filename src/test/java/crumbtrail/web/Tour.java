package crumbtrail.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Every page and every state of a page that a baker can come to. The bakes are invented.
 *
 * @param name what the stop is called, and its picture
 * @param path the address
 * @param fields what is posted to it; asked for by address where empty
 */
record Tour(String name, String path, Map<String, String> fields) {

  /** A tin loaf that fell, told in some detail. */
  static Map<String, String> tinLoaf() {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("title", "Tin loaf, Tuesday class at the tide mill");
    fields.put("style", "white tin loaf");
    fields.put("seen", "the top caved in\npale crust\nsmelt of wet slate");
    fields.put("recipe", "500 g bread flour\n310 g water\n1 1/2 tsp instant yeast\n6 g fine salt");
    fields.put("bulk-0-time", "60 min");
    fields.put("bulk-0-temperature", "24 C");
    fields.put("proof-0-time", "150 min");
    fields.put("proof-0-temperature", "30 C");
    fields.put("bake-0-time", "38 min");
    fields.put("bake-0-oven", "215 C");
    fields.put("core", "95 C");
    return fields;
  }

  static List<Tour> stops() {
    List<Tour> stops = new ArrayList<>();
    stops.add(page("form", "/"));
    stops.add(post("form-refused", "/trace", Map.of("room", "warmish", "seen", "pale crust")));
    stops.add(post("report", "/trace", tinLoaf()));
    stops.add(post("report-of-words", "/trace", Map.of("seen", "flat loaf\npale crust")));
    stops.add(post("precheck", "/precheck", tinLoaf()));
    stops.add(post("next", "/next", Map.of("sheet", SHEET, "flour", "600 g")));
    stops.add(post("next-refused", "/next", Map.of("sheet", SHEET, "flour", "a handful")));
    stops.add(page("log", "/log"));
    stops.add(page("log-searched", "/log?words=tin&cause=over-proofed&since=2026-03-01"));
    stops.add(page("log-none-found", "/log?words=bagel"));
    stops.add(page("log-bake", "/log/1"));
    stops.add(page("log-findings", "/log/1/findings"));
    stops.add(page("log-delete", "/log/1/delete"));
    stops.add(page("log-study", "/log/study"));
    stops.add(page("log-study-recipe", "/log/study?recipe=Tin+loaf"));
    stops.add(page("log-since", "/log/1/since"));
    stops.add(page("log-compare", "/log/1/compare?better=2"));
    stops.add(post("log-keep-refused", "/log", Map.of("sheet", SHEET, "baked", "soon")));
    stops.add(page("vary", "/vary"));
    stops.add(page("vary-turned", "/vary?bake=healthy-tin-loaf&turn=salt&range=0..4%25"));
    stops.add(
        page(
            "vary-crossed",
            "/vary?bake=healthy-tin-loaf&turn=oven&range=160..240C&second=bake-time"
                + "&secondRange=20..50"));
    stops.add(page("vary-refused", "/vary?bake=healthy-tin-loaf&turn=salt&range=few"));
    stops.add(page("lessons", "/lessons"));
    stops.add(page("lesson", "/lessons/1"));
    stops.add(page("mystery", "/mystery?level=easy&seed=7"));
    stops.add(page("mystery-asked", "/mystery?level=easy&seed=7&ask=recipe"));
    stops.add(page("mystery-ended", "/mystery?level=hard&seed=7&named=give-up"));
    stops.add(page("handbook", "/handbook"));
    stops.add(page("causes", "/causes"));
    stops.add(page("cause", "/causes/over-proofed"));
    stops.add(page("sign", "/signs/pale-crust"));
    stops.add(page("stage", "/stages/proof"));
    stops.add(page("about", "/about"));
    stops.add(
        post("answered", "/answer", Map.of("sheet", SHEET, "about", "dense-crumb", "said", "yes")));
    stops.add(
        post(
            "answer-refused",
            "/answer",
            Map.of("sheet", SHEET, "about", "core temperature", "said", "quite hot")));
    stops.add(page("api-docs", "/api/docs"));
    stops.add(page("matrix", "/handbook/matrix"));
    stops.add(page("link-damaged", "/trace?sheet=AAAA"));
    stops.add(page("not-found", "/nowhere"));
    stops.addAll(german());
    return stops;
  }

  // Last, since the browser remembers the language from here on.
  private static List<Tour> german() {
    return List.of(
        page("german-form", "/?lang=de"),
        post("german-form-refused", "/trace?lang=de", Map.of("room", "warm", "seen", "pale crust")),
        post("german-report", "/trace?lang=de", tinLoaf()),
        post("german-precheck", "/precheck?lang=de", tinLoaf()),
        post("german-next", "/next?lang=de", Map.of("sheet", SHEET, "dough", "1,2 kg")),
        page("german-log", "/log?lang=de"),
        page("german-log-bake", "/log/1?lang=de"),
        page("german-log-study", "/log/study?lang=de"),
        page("german-vary", "/vary?bake=healthy-tin-loaf&turn=salt&range=0..4%25&lang=de"),
        page("german-lesson", "/lessons/1?lang=de"),
        page("german-mystery", "/mystery?level=hard&seed=7&named=give-up&lang=de"),
        page("german-cause", "/causes/over-proofed?lang=de"),
        page("german-about", "/about?lang=de"),
        page("german-not-found", "/nowhere?lang=de"));
  }

  /** Whether it is in German. */
  static boolean inGerman(Tour stop) {
    return stop.name().startsWith("german-");
  }

  /** Whether it is a page of the bake log, in English. */
  static boolean ofLog(Tour stop) {
    return stop.name().startsWith("log");
  }

  /** The same loaf as a bake sheet. */
  static final String SHEET =
      """
      {"title": "Tin loaf", "style": "white tin loaf", "seen": ["pale crust", "the top caved in"],
       "formula": ["500 g bread flour", "310 g water", "5 g instant yeast", "6 g fine salt"],
       "process": {"bulk": [{"time": "60 min", "temperature": "24 C"}],
         "proof": [{"time": "150 min", "temperature": "30 C"}],
         "baking": {"stages": [{"time": "38 min", "oven": "215 C"}]}}}""";

  private static Tour page(String name, String path) {
    return new Tour(name, path, Map.of());
  }

  private static Tour post(String name, String path, Map<String, String> fields) {
    return new Tour(name, path, fields);
  }

  /** Goes there. A browser posts only forms, so a page of the server is made to hold one. */
  void visit(Browser browser, Served served) {
    String base = served.address().toString().replaceFirst("/$", "");
    if (fields.isEmpty()) {
      browser.driver().get(base + path);
      return;
    }
    browser.driver().get(base + "/about");
    browser
        .driver()
        .executeScript(
            """
            const form = document.createElement('form');
            form.method = 'post';
            form.action = arguments[0];
            for (const [name, text] of Object.entries(arguments[1])) {
              const field = document.createElement('textarea');
              field.name = name;
              field.value = text;
              form.append(field);
            }
            document.body.append(form);
            form.submit();
            """,
            path,
            fields);
    // Findings are led on to the address that carries their sheet.
    browser.until(
        "var path = '"
            + path
            + "', found = path.split('?')[0]; return (location.pathname + location.search === path"
            + " || location.pathname === found && location.search.startsWith('?sheet='))"
            + " && document.readyState === 'complete'");
  }

  /** What is posted, as a browser writes it. */
  String body() {
    return fields.entrySet().stream()
        .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
        .collect(Collectors.joining("&"));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  @Override
  public String toString() {
    return name;
  }
}
