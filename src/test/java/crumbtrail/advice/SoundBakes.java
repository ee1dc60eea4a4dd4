package crumbtrail.advice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Published formulas with sound processes. Where a source gives no hours they are ours, chosen as a
 * baker would; the file says which.
 */
final class SoundBakes {
  record Sound(String name, String source, String hours, BakeSheet sheet) {}

  private SoundBakes() {}

  static List<Sound> all() {
    try {
      JsonNode all =
          new ObjectMapper()
              .readTree(Files.readString(Path.of("src/test/resources/sound-bakes.json")));
      List<Sound> sound = new ArrayList<>();
      for (JsonNode one : all) {
        Reading reading = SheetReader.read(one.get("sheet"));
        sound.add(
            new Sound(
                one.get("name").asText(),
                one.get("source").asText(),
                one.get("hours").asText(),
                reading
                    .sheet()
                    .orElseThrow(
                        () ->
                            new IllegalStateException(
                                one.get("name") + ": " + reading.problems()))));
      }
      return sound;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
