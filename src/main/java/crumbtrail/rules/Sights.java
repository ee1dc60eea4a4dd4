package crumbtrail.rules;

import crumbtrail.rules.WrittenRule.Kind;
import crumbtrail.workup.Reading;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the rules can tell apart. A reading is to them no more than where it lies between the
 * numbers that rules name, where it lies against what is usual, and how far it can be trusted; two
 * readings that agree in this have the same rules speak with the same weight. Immutable.
 */
public final class Sights {
  private final Map<String, double[]> edges;

  /**
   * @param rules all rules that are at work
   */
  Sights(List<WrittenRule> rules) {
    Map<String, TreeSet<Double>> named = new HashMap<>();
    for (WrittenRule rule : rules) {
      for (WrittenRule.Condition condition : rule.conditions()) {
        if (condition.kind() == Kind.READING) {
          for (String reading : condition.keys()) {
            named.computeIfAbsent(reading, key -> new TreeSet<>()).addAll(condition.edges());
          }
        }
      }
    }
    Map<String, double[]> numbers = new HashMap<>();
    named.forEach(
        (reading, values) ->
            numbers.put(reading, values.stream().mapToDouble(Double::doubleValue).toArray()));
    edges = Map.copyOf(numbers);
  }

  /**
   * What the rules see of a reading.
   *
   * @param name of the reading
   * @param cell twice the number of edges below the value, and one more if it lies on an edge
   * @param beyondCustom whether it lies beyond all custom, on the side that the place tells
   */
  private record Sight(
      String name, int cell, Reading.Place place, boolean beyondCustom, double trust) {
    // Written out, as a few hundred what-ifs ask for it some ten thousand times.
    @Override
    public int hashCode() {
      return 31 * (31 * name.hashCode() + cell) + place.hashCode();
    }
  }

  /** Names of the readings that any rule looks at. */
  public Set<String> readings() {
    return edges.keySet();
  }

  /** What the rules see of some facts; the same for facts that are the same to them. */
  public List<Object> of(Collection<?> facts) {
    List<Object> seen = new ArrayList<>(facts.size());
    for (Object fact : facts) {
      seen.add(of(fact));
    }
    return seen;
  }

  /** What the rules see of a fact. */
  public Object of(Object fact) {
    return fact instanceof Reading reading
        ? new Sight(
            reading.name(),
            cell(edges.get(reading.name()), reading.value()),
            reading.place(),
            reading.belowAllCustom() || reading.aboveAllCustom(),
            reading.trust())
        : fact;
  }

  private static int cell(double[] edges, double value) {
    int cell = 0;
    if (edges != null) {
      while (cell < edges.length && edges[cell] < value) {
        cell++;
      }
      if (cell < edges.length && edges[cell] == value) {
        return 2 * cell + 1;
      }
    }
    return 2 * cell;
  }
}
