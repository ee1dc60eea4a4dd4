package crumbtrail.quantity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The words and signs by which bakers call the units. */
final class UnitNames {

  private static final Map<String, List<Unit>> NAMES = names();

  /** Capital T is a tablespoon and small t a teaspoon in many handwritten recipes. */
  private static final Map<String, Unit> CASE_MATTERS =
      Map.of("T", Unit.TABLESPOON, "t", Unit.TEASPOON, "Tb", Unit.TABLESPOON);

  private UnitNames() {}

  /** The unit of one of the dimensions wanted that goes by this name; names may hold one space. */
  static Optional<Unit> find(String name, Set<Dimension> wanted) {
    Unit exact = CASE_MATTERS.get(name);
    if (exact != null && wanted.contains(exact.dimension())) {
      return Optional.of(exact);
    }
    return NAMES.getOrDefault(name.toLowerCase(Locale.ROOT), List.of()).stream()
        .filter(unit -> wanted.contains(unit.dimension()))
        .findFirst();
  }

  private static Map<String, List<Unit>> names() {
    Map<String, List<Unit>> names = new HashMap<>();
    add(names, Unit.MILLIGRAM, "mg", "milligram", "milligrams");
    add(names, Unit.GRAM, "g", "gr", "grs", "gm", "gms", "gram", "grams", "gramme", "grammes");
    add(names, Unit.KILOGRAM, "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms");
    add(names, Unit.OUNCE, "oz", "ozs", "ounce", "ounces");
    add(names, Unit.POUND, "lb", "lbs", "pound", "pounds");
    add(names, Unit.MILLILITRE, "ml", "mls", "cc", "millilitre", "millilitres");
    add(names, Unit.MILLILITRE, "milliliter", "milliliters");
    add(names, Unit.CENTILITRE, "cl", "centilitre", "centilitres", "centiliter", "centiliters");
    add(names, Unit.DECILITRE, "dl", "decilitre", "decilitres", "deciliter", "deciliters");
    add(names, Unit.LITRE, "l", "litre", "litres", "liter", "liters", "ltr", "ltrs");
    add(names, Unit.TEASPOON, "tsp", "tsps", "teaspoon", "teaspoons", "teasp", "tea spoon");
    add(names, Unit.TEASPOON, "tea spoons", "teaspoonful", "teaspoonfuls");
    add(names, Unit.TABLESPOON, "tbsp", "tbsps", "tbs", "tblsp", "tbl", "tablespoon");
    add(names, Unit.TABLESPOON, "tablespoons", "table spoon", "table spoons", "tablespoonful");
    add(names, Unit.FLUID_OUNCE, "fl oz", "floz", "fluid ounce", "fluid ounces", "fluid oz");
    add(names, Unit.CUP, "cup", "cups", "c", "cupful", "cupfuls");
    add(names, Unit.PINT, "pint", "pints", "pt", "pts");
    add(names, Unit.QUART, "quart", "quarts", "qt", "qts");
    add(names, Unit.GALLON, "gallon", "gallons", "gal");
    add(names, Unit.PIECE, "piece", "pieces", "pc", "pcs", "each");
    add(names, Unit.PACKET, "packet", "packets", "pkt", "pkts", "sachet", "sachets", "pkg", "pkgs");
    add(names, Unit.PACKET, "envelope", "envelopes", "pack", "packs", "package", "packages");
    add(names, Unit.CAKE, "cake", "cakes", "cube", "cubes", "block", "blocks");
    add(names, Unit.STICK, "stick", "sticks");
    add(names, Unit.PINCH, "pinch", "pinches");
    add(names, Unit.DASH, "dash", "dashes", "splash");
    add(names, Unit.CELSIUS, "°c", "c", "celsius", "centigrade", "°celsius", "°centigrade");
    add(names, Unit.FAHRENHEIT, "°f", "f", "fahrenheit", "farenheit", "°fahrenheit");
    add(names, Unit.KELVIN, "k", "kelvin");
    add(names, Unit.SECOND, "s", "sec", "secs", "second", "seconds", "\"");
    add(names, Unit.MINUTE, "min", "mins", "minute", "minutes", "mn", "m", "'");
    add(names, Unit.HOUR, "h", "hr", "hrs", "hour", "hours");
    add(names, Unit.DAY, "d", "day", "days");
    add(names, Unit.WEEK, "week", "weeks", "wk", "wks");
    add(names, Unit.MONTH, "month", "months");
    add(names, Unit.MILLIMETRE, "mm", "millimetre", "millimetres", "millimeter", "millimeters");
    add(names, Unit.CENTIMETRE, "cm", "cms", "centimetre", "centimetres", "centimeter");
    add(names, Unit.CENTIMETRE, "centimeters");
    add(names, Unit.METRE, "m", "metre", "metres", "meter", "meters");
    add(names, Unit.KILOMETRE, "km", "kilometre", "kilometres", "kilometer", "kilometers");
    add(names, Unit.INCH, "in", "inch", "inches", "ins", "\"");
    add(names, Unit.FOOT, "ft", "foot", "feet", "'");
    add(names, Unit.PERCENT, "%", "percent", "per cent", "pct");
    return names;
  }

  private static void add(Map<String, List<Unit>> names, Unit unit, String... words) {
    for (String word : words) {
      names.computeIfAbsent(word, key -> new ArrayList<>()).add(unit);
    }
  }
}
