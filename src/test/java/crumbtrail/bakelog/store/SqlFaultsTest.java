package crumbtrail.bakelog.store;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.LogFault;
import java.sql.SQLException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a server means by the code of a fault (PostgreSQL documentation, appendix A). */
class SqlFaultsTest {
  @ParameterizedTest
  @CsvSource({
    "53100, FULL",
    "28P01, REFUSED",
    "28000, REFUSED",
    "3D000, REFUSED",
    "42501, REFUSED",
    "08001, UNREACHABLE",
    "08006, UNREACHABLE",
    "57P01, UNREACHABLE",
    "57P03, UNREACHABLE",
    "22001, OTHER"
  })
  void a_code_of_a_server_has_its_meaning(String code, LogFault.Kind kind) {
    SQLException fault = new SQLException("something", code);

    LogFault told =
        SqlFaults.of(Dialect.POSTGRES, "log", new IllegalStateException("around it", fault));

    assertThat(told.kind()).isEqualTo(kind);
    assertThat(told.getMessage()).startsWith("The bake log log ");
    assertThat(told.getCause()).hasRootCause(fault);
  }
}
