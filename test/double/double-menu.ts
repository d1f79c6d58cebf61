/** Native menus are not drawn: their templates are kept for the test to look at. */
import type { MenuItemConstructorOptions } from 'electron'

export class DoubleMenu {
  readonly template: readonly MenuItemConstructorOptions[]

  constructor(template: readonly MenuItemConstructorOptions[]) {
    this.template = template
  }

  /** The role of each top-level menu, in order. */
  get roles(): (string | undefined)[] {
    return this.template.map((item) => item.role)
  }

  item(id: string): MenuItemConstructorOptions | undefined {
    return itemsOf(this.template).find((item) => item.id === id)
  }
}

function itemsOf(items: readonly MenuItemConstructorOptions[]): MenuItemConstructorOptions[] {
  return items.flatMap((item) => [
    item,
    ...(Array.isArray(item.submenu) ? itemsOf(item.submenu) : []),
  ])
}
