package casefile

import (
	"encoding/binary"
	"hash/crc32"
)

// Framed puts the length before and the checksum behind any bytes, as a link
// that was not cut or mistyped has them.
func Framed(fields []byte) string {
	all := append(binary.AppendUvarint(nil, uint64(len(fields))), fields...)
	all = binary.BigEndian.AppendUint32(all, crc32.ChecksumIEEE(all))
	return "1" + spelled(all)
}

// Unframed gives the fields of a link that Link wrote.
func Unframed(link string) []byte {
	all, ok := unspelled(link[1:])
	if !ok {
		panic(link)
	}
	_, n := binary.Uvarint(all)
	return all[n : len(all)-4]
}

// LinkFields lists the fields of a share text in their numbers' order.
func LinkFields() []string { return linkFields[:] }

// Spelled and Unspelled are the letters of a share text.
var Spelled, Unspelled = spelled, unspelled
