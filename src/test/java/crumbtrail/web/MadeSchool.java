package crumbtrail.web;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.people.People;
import crumbtrail.people.Person;
import crumbtrail.people.Role;
import crumbtrail.people.SchoolClass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A school that is made anew for each question: Ida keeps it, Una and Ove teach a class each, Jon
 * and Eva belong to Una's.
 *
 * @param store its log
 * @param people numbers of Jon, Eva, Una, Ove and Ida
 * @param numbers what an address can name: {id} is a bake of Jon's that was given to the class,
 *     {own} one that was not
 */
record MadeSchool(LogStore store, List<Long> people, Map<String, String> numbers) {

  static MadeSchool anew(LogStore store) {
    People people = store.people();
    List<Person> before = people.everybody(99, 0);
    before.stream().filter(one -> !one.may(Role.KEEPER)).forEach(one -> people.delete(one.id()));
    before.stream().filter(one -> one.may(Role.KEEPER)).forEach(one -> people.delete(one.id()));
    long ida = added(people, "Ida", Role.KEEPER);
    long una = added(people, "Una", Role.TEACHER);
    long ove = added(people, "Ove", Role.TEACHER);
    long jon = added(people, "Jon", Role.BAKER);
    long eva = added(people, "Eva", Role.BAKER);
    SchoolClass tuesday = people.make("Tuesday", una, "AAAAA-BBBBB");
    SchoolClass friday = people.make("Friday", ove, "CCCCC-DDDDD");
    people.join(tuesday.id(), jon);
    people.join(tuesday.id(), eva);
    long given = store.of(Scope.baker(jon)).add(SomeBakes.traced(1).of(jon, tuesday.id()));
    long own = store.of(Scope.baker(jon)).add(SomeBakes.traced(2).of(jon, null));
    Map<String, String> numbers = new LinkedHashMap<>();
    numbers.put("id", "" + given);
    numbers.put("own", "" + own);
    numbers.put("photo", "" + photo(store, given));
    numbers.put("ownphoto", "" + photo(store, own));
    numbers.put("class", "" + tuesday.id());
    numbers.put("otherclass", "" + friday.id());
    numbers.put("person", "" + jon);
    return new MadeSchool(store, List.of(jon, eva, una, ove, ida), numbers);
  }

  private static long added(People people, String name, Role role) {
    return people.add(name, role, "$none").orElseThrow().id();
  }

  private static long photo(LogStore store, long bake) {
    return store.of(Scope.EVERYTHING).addPhoto(bake, SomeBakes.photo()).orElseThrow();
  }

  /** Nobody, and everybody in their order, logged in. */
  List<Member> members(Asker asker) {
    List<Member> members = new ArrayList<>();
    members.add(Member.nobody(asker));
    people.forEach(one -> members.add(Member.in(asker, store, one)));
    return members;
  }

  /** A text with numbers in place of what stands in braces. */
  String filled(String text) {
    String filled = text;
    for (Map.Entry<String, String> number : numbers.entrySet()) {
      filled = filled.replace("{" + number.getKey() + "}", number.getValue());
    }
    return filled;
  }

  List<Bake> jonsBakes() {
    return store
        .of(Scope.baker(people.get(0)))
        .bakes(0)
        .filter(one -> one.label().startsWith("Tin"))
        .toList();
  }
}
