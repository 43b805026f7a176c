package floorcalc.reference.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.reference.Suite;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** No row of a file is forgotten: a case rests on it, or a remark names it. */
@Tag("reference")
class RowsTest {
  private static List<GatheredTopic> topics() {
    return Suite.topics().stream().filter(GatheredTopic.class::isInstance).map(GatheredTopic.class::cast).toList();
  }

  @Test
  void eachRowIsUsedOrLeftOut() {
    assertThat(topics()).isNotEmpty().allSatisfy(topic -> {
      assertThat(topic.gather()).extracting(FileCases::file).containsExactlyElementsOf(topic.files());
      for (FileCases file : topic.gather()) {
        List<String> accounted = new ArrayList<>(file.placesUsed());
        accounted.addAll(file.placesLeftOut());
        assertThat(accounted).as(file.file()).containsExactlyInAnyOrderElementsOf(file.rows().stream().map(DataRow::place).toList());
      }
    });
  }

  @Test
  void rowsLeftOutAreNamedInRemarks() {
    for (GatheredTopic topic : topics()) {
      for (FileCases file : topic.gather()) {
        assertThat(file.leftOut()).allSatisfy(remark -> assertThat(remark.sort()).isEqualTo(Remark.Sort.LEFT_OUT));
        assertThat(topic.remarks()).containsAll(file.leftOut());
        assertThat(file.leftOut().isEmpty()).as(file.file()).isEqualTo(file.placesLeftOut().isEmpty());
      }
    }
  }

  /** What a source is, the row says; only these four can be said of one. */
  @Test
  void wordsForHowASourceIsKnown() {
    assertThat(List.of(Kind.READ, Kind.QUOTED, Kind.COMMON_PRACTICE, Kind.FROM_MEMORY))
        .extracting(kind -> FileCases.standing(kind).printed())
        .containsExactly("read in the source", "quoted by another", "common practice, no source", "from memory");
    assertThatThrownBy(() -> FileCases.standing(Kind.CONSTRUCTED)).isInstanceOf(IllegalArgumentException.class);
  }
}
