// SPDX-License-Identifier: MIT
// The body of a PDF.
#include "write/pdf_file.h"

#include <gtest/gtest.h>

namespace platewright {
namespace {

TEST(PdfText, IsPlainWhereItCanBe) {
    EXPECT_EQ(pdf_text("Coat"), "(Coat)");
    EXPECT_EQ(pdf_text("a (b) \\ c"), "(a \\(b\\) \\\\ c)");
    EXPECT_EQ(pdf_text(""), "()");
}

TEST(PdfText, IsUtf16Otherwise) {
    EXPECT_EQ(pdf_text("Д"), "<FEFF0414>");
    EXPECT_EQ(pdf_text("ü)"), "<FEFF00FC0029>");
    // The Unicode Standard 15.0, table 3-5: U+10302 is D800 DF02.
    EXPECT_EQ(pdf_text("\U00010302"), "<FEFFD800DF02>");
}

TEST(PdfFile, FindsItsObjects) {
    PdfFile file;
    const PdfObject first = file.reserve();
    const PdfObject second = file.add("<< /A 1 >>");
    file.set(first, "<< /B " + reference(second) + " >>");
    const std::string bytes = file.finish(first, second);
    EXPECT_EQ(bytes.substr(0, 9), "%PDF-1.7\n");
    const std::size_t table = bytes.find("xref\n0 3\n");
    ASSERT_NE(table, std::string::npos);
    EXPECT_NE(bytes.find("startxref\n" + std::to_string(table) + "\n%%EOF\n"), std::string::npos);
    for (const PdfObject object : {first, second}) {
        const std::size_t at = std::stoul(bytes.substr(table + 9 + 20 * object, 10));
        EXPECT_EQ(bytes.substr(at, 8), std::to_string(object) + " 0 obj\n");
    }
    EXPECT_NE(bytes.find("/Root 1 0 R /Info 2 0 R"), std::string::npos);
}

}  // namespace
}  // namespace platewright
