// SPDX-License-Identifier: MIT
// Fonts for the web.
#include "write/woff.h"

#include <gtest/gtest.h>
#include <zlib.h>

#include "text/shaping.h"
#include "text/subset.h"

namespace platewright {
namespace {

std::size_t number(const std::string& bytes, std::size_t at, int count) {
    std::size_t value = 0;
    for (int i = 0; i < count; ++i) {
        value =
            value << 8U | static_cast<unsigned char>(bytes.at(at + static_cast<std::size_t>(i)));
    }
    return value;
}

// RFC 4648, section 10.
TEST(Base64, GivesThePublishedExamples) {
    EXPECT_EQ(base64(""), "");
    EXPECT_EQ(base64("f"), "Zg==");
    EXPECT_EQ(base64("fo"), "Zm8=");
    EXPECT_EQ(base64("foo"), "Zm9v");
    EXPECT_EQ(base64("foob"), "Zm9vYg==");
    EXPECT_EQ(base64("fooba"), "Zm9vYmE=");
    EXPECT_EQ(base64("foobar"), "Zm9vYmFy");
    EXPECT_EQ(base64("\xFF\xFE"), "//4=");
}

TEST(ToWoff, HoldsEveryTableOfTheFile) {
    const Typesetter type;
    const std::string file = subset_for_web(font_file(type, Face::roman), {U'a', U'b'});
    const std::string woff = to_woff(file);
    ASSERT_EQ(woff.substr(0, 4), "wOFF");
    EXPECT_EQ(woff.substr(4, 4), "OTTO");
    EXPECT_EQ(number(woff, 8, 4), woff.size());
    const std::size_t count = number(woff, 12, 2);
    ASSERT_EQ(count, number(file, 4, 2));
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t entry = 44 + 20 * i;
        const std::size_t original = 12 + 16 * i;
        EXPECT_EQ(woff.substr(entry, 4), file.substr(original, 4));
        const std::size_t start = number(woff, entry + 4, 4);
        const std::size_t packed = number(woff, entry + 8, 4);
        uLongf size = number(woff, entry + 12, 4);
        EXPECT_EQ(start % 4, 0U);
        ASSERT_LE(packed, size);
        std::string table = woff.substr(start, packed);
        if (packed < size) {
            std::string whole(size, '\0');
            ASSERT_EQ(uncompress(reinterpret_cast<Bytef*>(whole.data()),
                                 &size,
                                 reinterpret_cast<const Bytef*>(table.data()),
                                 packed),
                      Z_OK);
            table = whole;
        }
        EXPECT_EQ(table,
                  file.substr(number(file, original + 8, 4), number(file, original + 12, 4)));
    }
}

TEST(ToWoff, RefusesDamagedFiles) {
    EXPECT_EQ(to_woff(""), "");
    EXPECT_EQ(to_woff("OTTO"), "");
    EXPECT_EQ(to_woff(std::string("OTTO\0\x09\0\0\0\0\0\0", 12)), "");
    std::string far_off("OTTO\0\x01\0\0\0\0\0\0CFF \0\0\0\0\xFF\xFF\xFF\xFF\0\0\0\x01", 28);
    EXPECT_EQ(to_woff(far_off), "");
}

}  // namespace
}  // namespace platewright
