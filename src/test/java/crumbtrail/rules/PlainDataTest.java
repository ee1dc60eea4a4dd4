package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crumbtrail.pantry.Ingredient;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlainDataTest {
  private enum Grain {
    RYE,
    SPELT
  }

  private record Sack(
      String name,
      Grain grain,
      int number,
      Integer spare,
      long seed,
      double kilos,
      Double price,
      boolean open,
      Boolean sold,
      List<String> notes,
      Map<String, Double> parts,
      List<Sack> within) {}

  private record Odd(Object anything) {}

  @Test
  void what_was_written_is_read_again() throws IOException {
    Sack full =
        new Sack(
            "Rye, coarse \u2013 \"Skarholm\"",
            Grain.SPELT,
            -7,
            3,
            1L << 40,
            0.1,
            -0.0,
            true,
            false,
            List.of("dry", "dry", ""),
            Map.of("bran", 12.5),
            List.of());
    Sack bare =
        new Sack("dry", null, 0, null, 0, Double.NaN, null, false, null, null, null, List.of(full));

    assertThat(read(Sack.class, written(Sack.class, List.of(full, bare, full))))
        .containsExactly(full, bare, full);
  }

  @Test
  void the_order_of_a_map_does_not_show() throws IOException {
    Map<String, Double> one = new LinkedHashMap<>();
    one.put("bran", 1.0);
    one.put("germ", 2.0);
    Map<String, Double> other = new LinkedHashMap<>();
    other.put("germ", 2.0);
    other.put("bran", 1.0);

    assertThat(written(Sack.class, List.of(holding(one))))
        .isEqualTo(written(Sack.class, List.of(holding(other))));
  }

  private static Sack holding(Map<String, Double> parts) {
    return new Sack("", Grain.RYE, 0, 0, 0, 0, 0.0, true, true, List.of(), parts, List.of());
  }

  @Test
  void what_is_no_plain_data_is_refused_when_it_is_written() {
    assertThatThrownBy(() -> written(Odd.class, List.of(new Odd("x"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Object");
  }

  @Test
  void a_file_that_ends_too_soon_is_a_fault() throws IOException {
    byte[] whole = written(Sack.class, List.of(holding(Map.of("bran", 1.0))));

    assertThatThrownBy(() -> read(Sack.class, Arrays.copyOf(whole, whole.length - 3)))
        .isInstanceOf(IOException.class);
  }

  @Test
  void the_programs_own_rules_are_those_of_the_folder() throws Exception {
    RuleFolder folder = RuleFolder.read(Path.of("rules"));
    RuleBook built = RuleBook.bundled();

    assertThat(built.rules()).isEqualTo(folder.book().rules());
    assertThat(built.catalogue().knowledge()).isEqualTo(folder.catalogue().knowledge());
    assertThat(built.places()).isEqualTo(folder.book().places());
    List<Ingredient> pantry = folder.pantry().all();
    assertThat(RuleBase.bundled().pantry().all()).isEqualTo(pantry);
  }

  private static <T extends Record> byte[] written(Class<T> type, List<T> values)
      throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PlainData.write(type, values, new DataOutputStream(bytes));
    return bytes.toByteArray();
  }

  private static <T extends Record> List<T> read(Class<T> type, byte[] bytes) throws IOException {
    return PlainData.read(type, new DataInputStream(new ByteArrayInputStream(bytes)));
  }
}
