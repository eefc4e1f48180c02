//go:build !js

package site

import (
	"bytes"
	"fmt"
	"go/ast"
	"go/format"
	"go/parser"
	"go/token"
	"maps"
	"regexp"
	"slices"
	"strings"
)

// The framework has a type of its own for each of HTML's 110 elements, each
// with a full set of methods, all with the same bodies. oneElement rewrites
// them as one type by many names. What a page may call widens; what the calls
// do stays.

var elementType = regexp.MustCompile(`\b(HTML|html)[A-Z]\w*`)

// textareaText is the one exception: a text area's text is its value.
const textareaText = `
func (e *htmlAny) Text(v any) HTMLAny {
	if e.tag == "textarea" {
		e.setAttr("value", v)
		return e
	}
	return e.Body(Text(v))
}

func (e *htmlAny) Textf(format string, v ...any) HTMLAny { return e.Text(FormatString(format, v...)) }
`

// oneElement rewrites the framework's html_gen.go, and refuses it when two
// elements differ in a method otherwise than is known here.
func oneElement(source []byte) ([]byte, error) {
	files := token.NewFileSet()
	file, err := parser.ParseFile(files, "html_gen.go", source, 0)
	if err != nil {
		return nil, err
	}
	text := func(n ast.Node) string {
		return string(source[files.Position(n.Pos()).Offset:files.Position(n.End()).Offset])
	}
	plain := func(s string) string {
		return elementType.ReplaceAllStringFunc(s, func(word string) string {
			switch {
			case word == "htmlElement":
				return word
			case strings.HasPrefix(word, "html"):
				return "htmlAny"
			}
			return "HTMLAny"
		})
	}

	var out bytes.Buffer
	out.WriteString("package app\n\nimport \"strings\"\n\ntype htmlAny struct{ htmlElement }\n" + textareaText)
	signatures, bodies := map[string]string{}, map[string]string{}
	var interfaces, structs []string
	for _, d := range file.Decls {
		switch d := d.(type) {
		case *ast.GenDecl:
			for _, spec := range d.Specs {
				t, ok := spec.(*ast.TypeSpec)
				if !ok {
					continue
				}
				switch shape := t.Type.(type) {
				case *ast.StructType:
					structs = append(structs, t.Name.Name)
				case *ast.InterfaceType:
					interfaces = append(interfaces, t.Name.Name)
					for _, m := range shape.Methods.List {
						if len(m.Names) == 0 {
							continue
						}
						name, signature := m.Names[0].Name, plain(text(m.Type))
						if old, ok := signatures[name]; ok && old != signature {
							return nil, fmt.Errorf("the framework's %s.%s is unlike that of other elements: %s, %s", t.Name.Name, name, signature, old)
						}
						signatures[name] = signature
					}
				}
			}
		case *ast.FuncDecl:
			if d.Recv == nil {
				out.WriteString(text(d) + "\n\n")
				continue
			}
			if d.Name.Name == "Text" || d.Name.Name == "Textf" {
				continue
			}
			body := plain(text(d))
			if old, ok := bodies[d.Name.Name]; !ok {
				bodies[d.Name.Name] = body
				out.WriteString(body + "\n\n")
			} else if old != body {
				return nil, fmt.Errorf("the framework's method %s does different things on different elements: %s, %s", d.Name.Name, body, old)
			}
		}
	}
	out.WriteString("type HTMLAny interface {\n\tUI\n")
	for _, name := range slices.Sorted(maps.Keys(signatures)) {
		out.WriteString("\t" + name + strings.TrimPrefix(signatures[name], "func") + "\n")
	}
	out.WriteString("}\n\n")
	for _, name := range interfaces {
		fmt.Fprintf(&out, "type %s = HTMLAny\n", name)
	}
	for _, name := range structs {
		fmt.Fprintf(&out, "type %s = htmlAny\n", name)
	}
	return format.Source(out.Bytes())
}
