BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
    Copy-Fixture ag-groups (Join-Path $TestDrive 'in/arms.psd') > $null
    Copy-Fixture ag-plain (Join-Path $TestDrive 'in/body.psd') > $null
    Copy-Fixture ag-plain (Join-Path $TestDrive 'in/a[1].psd') > $null
    Set-Content -LiteralPath (Join-Path $TestDrive 'in/notes.txt') -Value 'not a picture'
    Push-Location -LiteralPath (Join-Path $TestDrive 'in')
}

AfterAll { Pop-Location }

Describe 'Get-LayerFile' {
    It 'tells facts' {
        $file = Get-LayerFile arms.psd
        $file.Name | Should -Be 'arms.psd'
        $file.Path | Should -Be (Join-Path $PWD.ProviderPath 'arms.psd')
        "$($file.Format) $($file.Width)x$($file.Height) $($file.ColorMode) $($file.BitDepth)" | Should -Be 'Psd 32x32 Rgb 8'
        $file.Axis | Should -Be 16
        $file.LayerCount | Should -Be 4
        $file.PendingCount | Should -Be 0
    }

    It 'takes wildcards, several paths and paths from the pipeline, from the session''s folder' {
        (Get-LayerFile *.psd).Name | Should -Be 'a[1].psd', 'arms.psd', 'body.psd'
        (Get-LayerFile arms.psd, b*.psd).Name | Should -Be 'arms.psd', 'body.psd'
        ('arms.psd', 'body.psd' | Get-LayerFile).Name | Should -Be 'arms.psd', 'body.psd'
    }

    It 'takes a file with brackets in its name literally, and a text with brackets as a wildcard' {
        (Get-Item -LiteralPath 'a[1].psd' | Get-LayerFile).Name | Should -Be 'a[1].psd'
        (Get-LayerFile -LiteralPath 'a[1].psd').Name | Should -Be 'a[1].psd'
        Get-LayerFile 'a[1].psd' | Should -BeNullOrEmpty
    }

    It 'has no error for a wildcard without a match, and one for a path without a file' {
        (Get-Streams { Get-LayerFile nothing*.psd }).Errors | Should -BeNullOrEmpty
        $plain = (Get-Streams { Get-LayerFile nothing.psd }).Errors
        $plain.Count | Should -Be 1
        $plain[0].FullyQualifiedErrorId | Should -Be 'PathNotFound,LayerTools.Commands.GetLayerFileCommand'
        $plain[0].CategoryInfo.Category | Should -Be 'ObjectNotFound'
        (Get-Streams { Get-LayerFile -LiteralPath 'nothing[1].psd' }).Errors[0].CategoryInfo.Category | Should -Be 'ObjectNotFound'
    }

    It 'goes on after a file that is none, and says where and why' {
        $result = Get-Streams { Get-LayerFile arms.psd, notes.txt, body.psd }
        $result.Output.Name | Should -Be 'arms.psd', 'body.psd'
        $result.Errors.Count | Should -Be 1
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'NotALayeredFile,*'
        $result.Errors[0].CategoryInfo.Category | Should -Be 'InvalidData'
        $result.Errors[0].TargetObject | Should -Be (Join-Path $PWD.ProviderPath 'notes.txt')
        "$($result.Errors[0])" | Should -BeLike '*notes.txt: header, byte 0:*'
    }

    It 'refuses folders and places that are not on a disk' {
        (Get-Streams { Get-LayerFile . }).Errors[0] | Should -BeLike '*This is a folder.*'
        (Get-Streams { Get-LayerFile env:PATH }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'NotAFilePath,*'
        (Get-Streams { Get-LayerFile -LiteralPath variable:HOME }).Errors[0] | Should -BeLike "*belongs to 'Variable'*"
    }

    It 'refuses a file beyond a limit, and reads it with the limit raised' {
        (Get-Streams { Get-LayerFile arms.psd -Limit @{ Layers = 2 } }).Errors[0].CategoryInfo.Category | Should -Be 'LimitsExceeded'
        (Get-LayerFile arms.psd -Limit @{ layers = '20'; GroupDepth = 5; MemoryMegabytes = 10 }).LayerCount | Should -Be 4
        { Get-LayerFile arms.psd -Limit @{ Layer = 2 } } | Should -Throw '*Layers, GroupDepth, PathMegabytes, MemoryMegabytes and PictureMegapixels*' -ErrorId 'BadLimit*'
        { Get-LayerFile arms.psd -Limit @{ Layers = 'many' } } | Should -Throw '*whole number*'
    }

    It 'warns about what is odd' {
        $odd = Copy-Fixture groups-missing-closer (Join-Path $TestDrive 'odd.psd')
        $result = Get-Streams { Get-LayerFile $odd }
        $result.Output.Count | Should -Be 1
        $result.Warnings | Should -BeLike 'odd.psd:*never ends*'
    }

    It 'keeps no file open' {
        $path = Copy-Fixture ag-plain (Join-Path $TestDrive 'open.psd')
        $file = Get-LayerFile $path
        $stream = [IO.File]::Open($path, 'Open', 'ReadWrite', 'None')
        $stream.Dispose()
        $file.LayerCount | Should -Be 2
    }

    It 'is a table that shows pending edits' {
        $text = Get-LayerFile arms.psd | Set-Layer -LayerNumber 1 -Mark Red | Out-String -Width 120
        $text | Should -Match 'Name\s+Format\s+Size \(px\)\s+Ppi\s+Mode\s+Layers\s+Pending'
        $text | Should -Match 'arms\.psd\s+PSD\s+32 x 32\s+-\s+RGB, 8 bit\s+4\s+1'
    }
}
