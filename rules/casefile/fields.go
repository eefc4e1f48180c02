package casefile

import (
	"slices"
	"strconv"
	"strings"

	"filmfurrow/rules/field"
	"filmfurrow/rules/jsontext"
	"filmfurrow/rules/table/normals"
)

// Field is one named field of a grower.
type Field struct {
	Name string
	Case field.Case
}

// Limits of a file of fields.
const (
	MaxFieldsBytes = 1 << 20
	MaxFields      = 200
	MaxName        = 60
)

// EncodeFields writes many fields as one file: a version and a list of names
// with case files, the same bytes for the same fields.
func EncodeFields(fields []Field) []byte {
	var b strings.Builder
	b.WriteString("{\n  \"version\": " + strconv.Itoa(Version) + ",\n  \"fields\": [")
	for i := range fields {
		if i > 0 {
			b.WriteByte(',')
		}
		text := strings.TrimRight(string(Encode(&fields[i].Case)), "\n")
		b.WriteString("\n    {\n      \"name\": " + jsontext.Quote(fields[i].Name) + ",\n      \"case\": " + strings.ReplaceAll(text, "\n", "\n      ") + "\n    }")
	}
	b.WriteString("\n  ]\n}\n")
	return []byte(b.String())
}

// DecodeFields reads a file of fields, all or nothing: one wrong field and none
// is read. Errors name the field by its place in the list.
func DecodeFields(data []byte, places *normals.Table) ([]Field, error) {
	root, errs := parseWithin(data, MaxFieldsBytes, maxDepth+2)
	if root == nil {
		return nil, errs
	}
	d := decoder{errs: errs}
	d.known(root, "", "version", "fields")
	d.version(root.Get("version"))
	list, ok := root.Get("fields").([]any)
	if n := len(list); !ok || n == 0 || n > MaxFields {
		d.fail("fields", kindOf(root.Get("fields")), "1 to "+strconv.Itoa(MaxFields)+" fields", "Choose a file that “Save all fields” wrote.")
		return nil, d.errs
	}
	fields := make([]Field, 0, len(list))
	seen := map[string]bool{}
	for i, item := range list {
		at := "fields[" + strconv.Itoa(i+1) + "]"
		o, ok := item.(*jsontext.Object)
		if !ok {
			d.fail(at, kindOf(item), "an object", "Choose a file that “Save all fields” wrote.")
			continue
		}
		d.known(o, at, "name", "case")
		name, _ := o.Get("name").(string)
		name = strings.TrimSpace(name)
		if !GoodName(name) || seen[name] {
			d.fail(at+".name", kindOf(name), "1 to "+strconv.Itoa(MaxName)+" characters, each name once", "Give each field a name of its own.")
		}
		seen[name] = true
		tree, ok := o.Get("case").(*jsontext.Object)
		if !ok {
			d.fail(at+".case", kindOf(o.Get("case")), "an object", "Choose a file that “Save all fields” wrote.")
			continue
		}
		c, err := decodeTree(tree, nil, places)
		if wrong, ok := err.(field.Errors); ok {
			for _, e := range wrong {
				e.Field = at + "." + e.Field
				d.errs = append(d.errs, e)
			}
		}
		fields = append(fields, Field{name, c})
	}
	if len(d.errs) > 0 {
		return nil, d.errs
	}
	return fields, nil
}

// known refuses names that an object does not have.
func (d *decoder) known(o *jsontext.Object, at string, names ...string) {
	for _, name := range o.Names {
		if !slices.Contains(names, name) {
			d.fail(join(at, name), "unknown field", strings.Join(names, " and "), "Remove it.")
		}
	}
}

// GoodName tells whether a name may stand for a field: 1 to [MaxName] characters,
// none of them a control character.
func GoodName(name string) bool {
	n := len([]rune(name))
	return n >= 1 && n <= MaxName && !strings.ContainsFunc(name, func(r rune) bool { return r < ' ' || r == 0x7f })
}
