package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.people.Passwords;
import crumbtrail.people.Role;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;

/** A class and its teacher before a shared log, in a real browser. */
@Tag("packaged")
class PeopleIT {
  private static final String PASSWORD = "rye and salt and patience";

  @RegisterExtension static final Visit visit = new Visit();

  private static Served served;

  @BeforeAll
  static void serve() throws IOException {
    Path folder = Files.createTempDirectory("crumbtrail-school");
    try (LogStore store = SqlLogStore.open(LogFace.file(folder))) {
      store.people().add("Ida", Role.KEEPER, Passwords.hash(PASSWORD));
      store.people().add("Una", Role.TEACHER, Passwords.hash(PASSWORD));
    }
    served = Served.shared(folder);
  }

  @AfterAll
  static void stop() {
    served.close();
  }

  @Test
  void a_teacher_makes_a_class_and_sees_what_a_baker_gives_to_it() throws IOException {
    visit.scripts(false);
    open("log/classes");
    assertSound("log-in");
    logIn("Una");
    visit.says("h1", "Classes");
    visit.type("name", "Tuesday");
    visit.follow("main form.log-in button");
    visit.says(".done", "The class is made.");
    String code = visit.text(".code");
    assertThat(code).hasSize(11);
    assertSound("classes");
    logOut();

    // The baker has typed a whole sheet before there is an account.
    new Tour("report", "/trace", Tour.tinLoaf()).visit(visit.browser(), served);
    visit.click("#keep ~ details > summary");
    visit.follow("form.keep button[type=submit]");
    visit.says(".done", "What you sent is not lost.");
    open("log/join");
    visit.type("code", code);
    visit.type("name", "Jon");
    visit.type("password", PASSWORD);
    visit.type("again", PASSWORD);
    assertSound("join");
    visit.follow("main form.log-in button");
    visit.says(".done", "You belong to the class now.");
    assertSound("account");

    new Tour("report", "/trace", Tour.tinLoaf()).visit(visit.browser(), served);
    visit.click("#keep ~ details > summary");
    visit.click(By.xpath("//select[@id='class']/option[.='Tuesday']"));
    visit.follow("form.keep button[type=submit]");
    visit.says(".done", "The bake is in the log.");
    assertSound("bake-of-a-class");
    logOut();

    open("log");
    logIn("Una");
    visit.click(By.xpath("//select[@id='of']/option[.='Tuesday']"));
    visit.follow("form.search button");
    visit.says(".bakes li", "Tin loaf, Tuesday class at the tide mill");
    visit.follow(".bakes h2 a");
    visit.says("h1", "Tin loaf, Tuesday class at the tide mill");
    assertThat(visit.text("main")).contains("Baked by Jon.");
    assertSound("bake-of-another");
    logOut();

    open("log/people");
    logIn("Ida");
    visit.says("h1", "People");
    assertThat(visit.texts(".person > summary")).hasSize(3);
    assertSound("people");
    open("log/account/delete");
    assertSound("account-delete");
  }

  private static void logIn(String name) {
    visit.awaited(By.id("password"));
    visit.type("name", name);
    visit.type("password", PASSWORD);
    visit.follow("main form.log-in button");
  }

  private static void logOut() {
    visit.follow(".whose form button");
    visit.says(".done", "You are logged out.");
  }

  private static void open(String path) {
    visit.page().get(served.address() + path);
  }

  // Axe runs by script, so they are let run for the moment.
  private static void assertSound(String name) throws IOException {
    visit.scripts(true);
    visit.browser().size(1280, 900);
    visit.browser().unfold();
    visit.browser().keepPicture("people-" + name + "-1280");
    assertThat(Axe.faults(visit.page())).as(name).isEmpty();
    visit.browser().scheme("dark");
    assertThat(Axe.faults(visit.page(), List.of("color-contrast"))).as(name).isEmpty();
    visit.browser().scheme("light");
    visit.browser().size(320, 640);
    assertThat(Axe.faults(visit.page(), List.of("target-size", "label"))).as(name).isEmpty();
    assertThat(visit.script("return document.documentElement.scrollWidth"))
        .as("%s scrolls sideways on a phone", name)
        .isEqualTo(320L);
    visit.browser().size(1280, 900);
    visit.scripts(false);
  }
}
