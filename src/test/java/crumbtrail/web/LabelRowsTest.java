package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.web.LabelRows.Spot;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class LabelRowsTest {

  @Test
  void farApartLabelsShareARow() {
    LabelRows rows = new LabelRows(0, 400);
    assertThat(rows.place(10, 60).row()).isZero();
    assertThat(rows.place(200, 60).row()).isZero();
    assertThat(rows.rows()).isEqualTo(1);
  }

  @Test
  void aLabelAtTheRightEdgeTurnsLeft() {
    Spot spot = new LabelRows(0, 400).place(390, 60);
    assertThat(spot.end()).isEqualTo(386);
  }

  @Test
  void aLabelWiderThanTheRoomStartsAtItsLeft() {
    assertThat(new LabelRows(10, 100).place(50, 500).start()).isEqualTo(10);
  }

  @Test
  void noLabelsNeedNoRows() {
    assertThat(new LabelRows(0, 400).rows()).isZero();
  }

  @Property
  void noLabelCoversAnother(
      @ForAll @Size(min = 1, max = 9) List<@DoubleRange(min = 0, max = 700) Double> leaders) {
    LabelRows rows = new LabelRows(0, 700);
    List<Spot> spots = new ArrayList<>();
    leaders.stream().sorted().forEach(leader -> spots.add(rows.place(leader, 80)));
    for (Spot one : spots) {
      assertThat(one.start()).isBetween(0.0, 620.0);
      assertThat(spots)
          .filteredOn(other -> !other.equals(one) && other.row() == one.row())
          .allMatch(other -> other.end() <= one.start() || other.start() >= one.end());
    }
  }
}
