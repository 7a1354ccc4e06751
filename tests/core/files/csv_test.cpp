#include "core/files/csv.h"

#include <gtest/gtest.h>

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
  EXPECT_EQ(csvRow({"-1.5", "+2", "-2e-3", "0", ""}), "-1.5,+2,-2e-3,0,\r\n");
}

}  // namespace
}  // namespace stopwalk::files
