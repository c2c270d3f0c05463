package org.thalweg.api.json;

/** Characters of UTF-8 that take more than a byte [published: Unicode Standard, table 3-7, well-formed byte sequences]. */
final class Utf8 {

    private Utf8() {}

    /** The place behind the character at {@code at}, whose first byte is negative; -1 where there is none before {@code end}. */
    static int behind(byte[] bytes, int at, int end) {
        int first = bytes[at] & 0xFF;
        int more = first < 0xE0 ? 1 : first < 0xF0 ? 2 : 3;
        if (first < 0xC2 || first > 0xF4 || end - at <= more) {
            return -1;
        }
        int second = bytes[at + 1] & 0xFF;
        int least = first == 0xE0 ? 0xA0 : first == 0xF0 ? 0x90 : 0x80;
        int most = first == 0xED ? 0x9F : first == 0xF4 ? 0x8F : 0xBF;
        if (second < least || second > most) {
            return -1;
        }
        for (int i = at + 2; i <= at + more; i++) {
            if ((bytes[i] & 0xC0) != 0x80) {
                return -1;
            }
        }
        return at + more + 1;
    }
}
