#include "core/files/csv.h"

#include <gtest/gtest.h>

#include <clocale>

namespace stopwalk::files {
namespace {

TEST(Csv, QuotesWhatWouldPartACell) {
  EXPECT_EQ(csvRow({"a", "b,c", "d \"e\""}), "a,\"b,c\",\"d \"\"e\"\"\"\r\n");
}

// A name typed by somebody must not become a formula where the table is opened.
TEST(Csv, LeavesNoTextThatASpreadsheetWouldCompute) {
  EXPECT_EQ(csvRow({"=1+1", "+cmd", "-2+3", "@sum", " =1", "-"}), "'=1+1,'+cmd,'-2+3,'@sum,' =1,-\r\n");
}

TEST(Csv, LeavesNumbersAsTheyAre) {
  EXPECT_EQ(csvRow({"-1.5", "+2", "-2e-3", " -.5", "-007", "0", ""}), "-1.5,+2,-2e-3, -.5,-007,0,\r\n");
}

TEST(Csv, TakesNoFormulaForANumber) {
  EXPECT_EQ(csvRow({"=5", "@5", "+-2", "--2", "-1-1", "-e", "-inf", "-nan", "-0x10"}),
            "'=5,'@5,'+-2,'--2,'-1-1,'-e,'-inf,'-nan,'-0x10\r\n");
}

// Under any locale of a decimal comma that is there; that nothing asks for one is Tree.CoreAsksNoLocale.
TEST(Csv, AsksNoLocale) {
  for (const char* comma : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "es_ES.UTF-8"})
    if (std::setlocale(LC_NUMERIC, comma)) break;
  const std::string row = csvRow({"-1.5", "-1,5"});
  std::setlocale(LC_NUMERIC, "C");
  EXPECT_EQ(row, "-1.5,\"'-1,5\"\r\n");
}

}  // namespace
}  // namespace stopwalk::files
