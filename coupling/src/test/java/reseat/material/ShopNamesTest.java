package reseat.material;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Materials by the names of a shop. */
class ShopNamesTest {

  private static final MaterialCatalog CATALOG = MaterialCatalog.standard();

  @ParameterizedTest
  @CsvSource({
    "aluminum, 6061-T6",
    "Aluminum plate, 6061-T6",
    "bearing steel, 52100",
    "4140, 4140",
    "brass bar, C360",
    "52100 balls, 52100",
    "drill rod, O1",
    "cold-rolled steel, 1018",
    "tungsten carbide ball, tungsten carbide"
  })
  void aShopNameThatStandsForOneMaterialFindsIt(String said, String name) {
    assertThat(CATALOG.find(said).map(Material::name)).contains(name);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "hardened steel",
        "steel",
        "tool steel",
        "dowel pin",
        "dowel pins",
        "stainless steel",
        "steel plate"
      })
  void aShopNameThatStandsForSeveralGivesAListOfMetals(String said) {
    assertThat(CATALOG.find(said)).isEmpty();
    List<String> meant = CATALOG.meant(said);
    assertThat(meant).hasSizeGreaterThan(1);
    for (String name : meant) {
      Material m = CATALOG.find(name).orElseThrow();
      assertThat(m.brittle()).as(name).isFalse();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "alumnum",
        "aluminm",
        "alumimun",
        "aluminiom",
        "steal plate",
        "4142",
        "zirconium steel"
      })
  void aMetalIsNeverTakenForACeramic(String said) {
    for (String name : CATALOG.meant(said)) {
      assertThat(CATALOG.find(name).orElseThrow().brittle()).as(said + " " + name).isFalse();
    }
  }

  @Test
  void everyShopNameStandsForMaterialsOfTheTable() {
    for (String said :
        List.of("ceramic", "gauge pin", "drill blank", "cast iron", "bolt", "bronze")) {
      assertThat(CATALOG.meant(said)).isNotEmpty().allMatch(n -> CATALOG.find(n).isPresent());
    }
  }

  @Test
  void theTablesAreThoseOfTheVersionThatStandsInResults() throws Exception {
    assertThat(digest("materials.tsv") + digest("friction.tsv"))
        .as("a table changed: raise MaterialCatalog.VERSION and put the new digests here")
        .isEqualTo("4a9a789aeaae862682cde8a0");
    assertThat(MaterialCatalog.VERSION).isEqualTo(2);
  }

  private static String digest(String table) throws IOException, NoSuchAlgorithmException {
    try (InputStream in = MaterialCatalog.class.getResourceAsStream(table)) {
      byte[] sum = MessageDigest.getInstance("SHA-256").digest(in.readAllBytes());
      return HexFormat.of().formatHex(sum).substring(0, 12);
    }
  }
}
